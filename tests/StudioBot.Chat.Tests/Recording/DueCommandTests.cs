using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class DueCommandTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_promise_is_until_the_end_of_its_day()
    {
        Assert.StartsWith(
            "21 is promised for 28 Jun 2027, 320.00 EUR.", _studio.Hear("due 21 28 june 320 for a customer"), StringComparison.Ordinal);
        Assert.Equal(
            new PieceEvent.Due(new DateTimeOffset(2027, 6, 28, 21, 59, 0, TimeSpan.Zero), new Money(32000), "for a customer"),
            _studio.Look(view => view.Pieces.Lines(21))[^1].What);   // 23:59 of a summer's day in Vienna
    }

    [Theory]
    [InlineData("due 1 28 june", "1 is sold: it can't be promised. Nothing recorded.")]
    [InlineData("due 21 yesterday", "24 Nov is past: a promise is of a day to come. Nothing recorded.")]
    public void What_can_not_be_promised_is_named(string words, string trouble) =>
        Assert.StartsWith(trouble, _studio.Hear(words), StringComparison.Ordinal);
}
