using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class CoatFailedTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    // Worked by hand: full cure 7 days at 21 °C is 7.6 days at 20 °C from 25 Nov, 10:00 in Vienna.
    [Fact]
    public void It_says_when_to_sand_and_coat_again()
    {
        _studio.Say("coat 14 180 ml 2:1");
        var reply = _studio.Say("coat 14 failed fisheyes").Reply;

        Assert.StartsWith(
            "Coat on 14 failed: fisheyes.\nLet it cure until 3 Dec, then sand it dull, wipe it and coat again.",
            reply.PlainText,
            StringComparison.Ordinal);
        Assert.Equal("why fisheyes", reply.Buttons[0].Line);
        Assert.Equal(new PieceEvent.Failed("fisheyes"), _studio.Look(view => view.Pieces.Lines(14))[^1].What);
    }

    [Fact]
    public void Without_a_coat_there_is_nothing_to_fail() =>
        Assert.StartsWith(
            "17 is still drying: no coat on it that could fail. Nothing recorded.",
            _studio.Hear("coat 17 failed"),
            StringComparison.Ordinal);
}
