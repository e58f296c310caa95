using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Tests.House;

/// <summary>Figures are worked by hand from the invented studio.</summary>
public sealed class RecipeSetTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_can_be_mixed_from_now_on()
    {
        // 20 ml of mica are 20 / 4.92892 level spoons of 2.2 g: 8.927 g
        Assert.Equal(
            """
            Reef is a recipe now.
            medium     60 ml
            white      20 ml
            blue mica  8.9 g
            It makes no stock: a batch of it goes into pours.
            """.ReplaceLineEndings("\n"),
            studio.Tells("recipe reef 60 ml medium 20 ml white 20 ml blue mica"));
        Assert.Equal(8.927, ((Amount.ByMass)Parts("reef")[2]).Mass.Grams, 3);
        studio.Tells("mix reef 80 ml");
    }

    [Fact]
    public void One_that_is_here_gets_other_parts_and_says_what_it_was()
    {
        var said = studio.Tells("recipe medium 200 ml neutral base 100 ml gloss varnish");

        Assert.StartsWith("Medium has other parts from now on.", said, StringComparison.Ordinal);
        Assert.Contains("It was 300 ml neutral base, 100 ml gloss varnish.", said, StringComparison.Ordinal);
        Assert.Contains("goes on the shelf as medium", said, StringComparison.Ordinal);
        studio.Tells("mix medium 300 ml");
        Assert.Equal((1950, 830), (studio.Level("neutral base"), studio.Level("gloss varnish")));
    }

    [Fact]
    public void One_of_a_mixtures_name_makes_it()
    {
        studio.Tells("material new glaze as mixture");
        studio.Tells("recipe glaze 90 ml gloss varnish 10 ml thinner");
        studio.Tells("mix glaze 200 ml");
        Assert.Equal((200, 750, 390), (studio.Level("glaze"), studio.Level("gloss varnish"), studio.Level("thinner")));
    }

    [Theory]
    [InlineData("recipe reef 60 ml medium 8 cups", "is counted")]
    [InlineData("recipe reef 60 ml medium 20 ml medium", "stands there twice")]
    [InlineData("recipe white 60 ml medium 20 ml ochre", "is a material")]
    [InlineData("recipe medium 60 ml medium 20 ml ochre", "can't be a part of itself")]
    public void What_makes_no_sense_is_refused(string words, string why) =>
        Assert.Contains(why, studio.Refuses(words).PlainText, StringComparison.Ordinal);

    [Fact]
    public void It_can_be_taken_back()
    {
        var before = Parts("medium");
        studio.Tells("recipe reef 60 ml medium 20 ml white");
        Assert.True(studio.Say("undo").Recorded);
        Assert.DoesNotContain(studio.Look(view => view.Recipes.All()), recipe => recipe.Name == "reef");
        studio.Tells("recipe medium 200 ml neutral base 100 ml gloss varnish");
        Assert.True(studio.Say("undo").Recorded);
        Assert.Equal(before, Parts("medium"));
    }

    private List<Amount> Parts(string recipe) =>
        studio.Look(view => view.Recipes.All().Single(one => one.Name == recipe).Parts.Select(part => part.Amount).ToList());
}
