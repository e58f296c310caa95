using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class PourMeasuredTests
{
    // Worked by hand: 318 less 40 less 55 are 223 ml, over 900 cm² 2.48 mm.
    [Fact]
    public void What_was_mixed_left_and_caught_says_how_thick_it_lies()
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith(
            "17: 318 ml mixed, 40 ml left in the cups, 55 ml caught.\n223 ml stay on it: 2.48 mm on the face.",
            studio.Hear("pour 17 318 ml left 40 caught 55"),
            StringComparison.Ordinal);
        Assert.Equal(
            [
                new PieceEvent.Mixed(Volume.FromMillilitres(318)),
                new PieceEvent.Left(Volume.FromMillilitres(40)),
                new PieceEvent.Caught(Volume.FromMillilitres(55)),
            ],
            studio.Look(view => view.Pieces.Lines(17)).Select(line => line.What).TakeLast(3));
    }

    [Fact]
    public void More_left_than_was_mixed_is_not_recorded()
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith(
            "400 ml left and caught are more than the 318 ml mixed. Nothing recorded.",
            studio.Hear("pour 17 318 ml left 400"),
            StringComparison.Ordinal);
        Assert.DoesNotContain(studio.Look(view => view.Pieces.Lines(17)), line => line.What is PieceEvent.Mixed);
    }
}
