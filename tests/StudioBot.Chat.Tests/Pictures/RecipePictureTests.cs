using StudioBot.Chat.Pictures;

namespace StudioBot.Chat.Tests.Pictures;

public sealed class RecipePictureTests
{
    private static readonly RecipeFigures Ocean = Of(
        new("medium", "240 ml", 0.6), new("white", "100 ml", 0.25), new("blue", "60 ml", 0.15), new("gold mica", "2.5 g", null));

    /// <summary>What the picture of a recipe may have to show.</summary>
    public static TheoryData<string> Cases => [.. Figures.Keys];

    private static Dictionary<string, RecipeFigures> Figures => new()
    {
        ["one part"] = Of(new RecipeShare("white", "100 ml", 1)),
        ["four parts"] = Ocean,
        ["twelve alike"] = Of([.. Enumerable.Range(1, 12).Select(at => new RecipeShare($"colour {at}", "10 ml", 1 / 12.0))]),
        ["forty"] = Of([.. Enumerable.Range(1, 40).Select(at => new RecipeShare($"colour {at}", "10 ml", 1 / 40.0))]),
        ["a drop in a bucket"] = Of(new("white", "123456 ml", 0.999999), new("blue", "0.1 ml", 0.000001)),
        ["long words"] = Of(new RecipeShare(Long("white "), Long("10 ml "), 1)) with { Title = Long("ocean "), Line = Long("shares ") },
        ["strange words"] = Of(new RecipeShare("\U0001F3A8\0שלום", "10 ml", 1)) with { Title = "\U0001F3A8\n\tocean" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void All_its_words_can_be_read(string named)
    {
        using var sheet = RecipePicture.Drawn(Figures[named]);
        Legible.Check(sheet);
    }

    [Fact]
    public void It_says_each_part_its_amount_and_its_share()
    {
        using var sheet = RecipePicture.Drawn(Ocean);
        Assert.Superset(
            new HashSet<string> { "Ocean: 400 ml, 4 parts", "white", "100 ml", "25 %", "gold mica", "2.5 g", "on top", "1", "4" },
            sheet.Texts.Select(text => text.Words).ToHashSet());
    }

    [Fact]
    public void Parts_that_have_no_room_are_counted()
    {
        using var sheet = RecipePicture.Drawn(Figures["forty"]);
        Assert.Contains(sheet.Texts, text => text.Words == "and 26 more");
    }

    [Fact]
    public void The_same_figures_give_the_same_bytes() => Assert.Equal(RecipePicture.Png(Ocean), RecipePicture.Png(Ocean));

    private static RecipeFigures Of(params RecipeShare[] parts) => new("Ocean: 400 ml, 4 parts", "Shares by volume.", parts);

    private static string Long(string words) => string.Concat(Enumerable.Repeat(words, 60));
}
