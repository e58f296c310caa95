using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

/// <summary>Figures are worked by hand from the invented studio: medium is 300 ml of neutral base (2150 ml there) and
/// 100 ml of gloss varnish (930 ml there); 950 ml of it stand on the shelf; 13 batches are numbered.</summary>
public sealed class MixCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Its_parts_leave_the_shelf_and_it_enters_with_the_next_number()
    {
        Assert.Equal(
            """
            Batch 14: 600 ml medium, 1550 ml here.
            Taken:
            neutral base   450 ml
            gloss varnish  150 ml
            From N-5 and V-3.
            """.ReplaceLineEndings("\n"),
            studio.Tells("mix medium 600 ml"));
        Assert.Equal((1700, 780, 1550), (studio.Level("neutral base"), studio.Level("gloss varnish"), studio.Level("medium")));
        var (batch, lot) = studio.Look(view => (view.Batches.All()[^1], view.Lots.All()[^1]));
        Assert.Equal((14, "medium", "Mira", lot.Id), (batch.Number, batch.Recipe, batch.Maker, batch.LotId));
        Assert.Equal(600, batch.Made.Millilitres);
    }

    [Fact]
    public void A_powder_leaves_by_weight_and_takes_its_grains_room()
    {
        // ocean: 200 ml and 7 g of grains at 2.8 g/ml, so 202.5 ml; to 405 ml everything doubles
        var said = studio.Tells("mix ocean 405 ml");

        Assert.StartsWith("Batch 14: 405 ml ocean.\nTaken:\nmedium       280 ml\nwhite         50 ml\n", said, StringComparison.Ordinal);
        Assert.Equal((670, 770, 36, 27.5), (studio.Level("medium"), studio.Level("white"), studio.Level("blue mica"), studio.Level("silver mica")));
        Assert.Null(studio.Look(view => view.Batches.All()[^1].LotId));
    }

    [Fact]
    public void By_weight_it_goes_by_density()
    {
        // 300 ml × 1.05 + 100 ml × 1.03 = 418 g are 400 ml
        Assert.StartsWith("Batch 14: 400 ml medium, 1350 ml here.", studio.Tells("mix medium 418 g"), StringComparison.Ordinal);
        Assert.Equal((1850, 830), (studio.Level("neutral base"), studio.Level("gloss varnish")));
    }

    [Fact]
    public void How_it_flowed_is_kept_with_it()
    {
        Assert.Contains("Kept with it: Ford 4 22 s at ", studio.Tells("mix medium 400ml ford4 22 s"), StringComparison.Ordinal);
        Assert.Equal((14, 22d), studio.Look(view => view.Batches.Flows(1).Select(one => (one.Batch, one.Reading.Seconds.TotalSeconds)).Single()));
    }

    [Fact]
    public void Short_of_a_part_nothing_is_mixed_and_the_part_is_named()
    {
        // 3 l take 2250 ml and 750 ml; 2150 ml make 2866.7 ml, so 2860
        var reply = studio.Refuses("mix medium 3 L");

        Assert.StartsWith("Neutral base is short: 2250 ml needed, 2150 ml in use here. Nothing recorded.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(("Mix 2860 ml", "mix medium 2860 ml"), (reply.Buttons[0].Label, reply.Buttons[0].Line));
        Assert.Equal(13, studio.Look(view => view.Batches.All().Count));
        studio.Tells(reply.Buttons[0].Line);
        Assert.Equal(5, studio.Level("neutral base"));      // 2150 − 2145
    }

    [Fact]
    public void What_is_mixed_for_another_is_theirs() =>
        Assert.Equal("Pia", Maker("mix medium 400 ml for Pia"));

    [Theory]
    [InlineData("mix medium 400 ml")]
    [InlineData("mix ocean 200 ml")]
    public void It_can_be_taken_back(string words)
    {
        studio.IsUndone(words);
        Assert.Equal(13, studio.Look(view => view.Batches.All().Count));
    }

    [Fact]
    public void What_was_used_of_it_holds_it()
    {
        studio.Tells("count medium 0 ml");
        studio.Tells("mix medium 400 ml");
        Assert.Contains("From batch 14.", studio.Tells("used 100 ml medium", "Pia"), StringComparison.Ordinal);

        var outcome = studio.Say("undo");

        Assert.False(outcome.Recorded);
        Assert.Contains("used 100 ml medium", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(300, studio.Level("medium"));
    }

    private string Maker(string words)
    {
        Assert.True(studio.Say(words).Recorded);
        return studio.Look(view => view.Batches.All()[^1].Maker);
    }
}
