using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class WeighCommandTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_weighing_says_how_much_went_since_the_last()
    {
        Assert.StartsWith(
            "17: 318.4 g.\nIt is still drying, on B3, studio.", _studio.Hear("weigh 17 318.4 g"), StringComparison.Ordinal);
        _studio.Now = _studio.Now.AddHours(26);

        Assert.StartsWith("17: 317.2 g, −1.2 in 26 h.", _studio.Hear("weigh 17 317.2 g"), StringComparison.Ordinal);
        Assert.Equal(new PieceEvent.Weighed(Mass.FromGrams(317.2)), Last(17));
    }

    [Fact]
    public void Several_are_recorded_together()
    {
        Assert.StartsWith(
            "2 weighings.\n17  318.4 g\n18  402.1 g", _studio.Hear("weigh 17 318.4g\n18 402.1g"), StringComparison.Ordinal);
        Assert.Equal(new PieceEvent.Weighed(Mass.FromGrams(402.1)), Last(18));
    }

    [Fact]
    public void The_bare_weight_is_kept_apart()
    {
        Assert.StartsWith("17 bare: 262.1 g.", _studio.Hear("weigh 17 bare 262.1 g"), StringComparison.Ordinal);
        Assert.Equal(new PieceEvent.Bare(Mass.FromGrams(262.1)), Last(17));
    }

    [Theory]
    [InlineData("weigh 17 250 g")]          // lighter than bare
    [InlineData("weigh 17 640 g")]          // more than double
    [InlineData("weigh 17 bare 330 g")]     // bare heavier than poured
    [InlineData("weigh 18 402.1 g\n17 3184 g")]
    public void An_absurd_weight_asks_and_its_button_records_it(string words)
    {
        _studio.Say("weigh 17 bare 262.1 g");
        _studio.Say("weigh 17 318.4 g");
        var asked = _studio.Say(words);

        Assert.False(asked.Recorded);
        Assert.Equal(new PieceEvent.Weighed(Mass.FromGrams(318.4)), Last(17));
        Assert.True(_studio.Say(Assert.Single(asked.Reply.Buttons, button => button.Agrees).Line, agreed: true).Recorded);
    }

    [Fact]
    public void What_is_sold_is_not_here_to_be_weighed() =>
        Assert.StartsWith("1 is sold: it isn't here to be weighed. Nothing recorded.", _studio.Hear("weigh 1 200 g"), StringComparison.Ordinal);

    private PieceEvent Last(int number) => _studio.Look(view => view.Pieces.Lines(number))[^1].What;
}
