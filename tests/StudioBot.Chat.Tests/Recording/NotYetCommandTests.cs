using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class NotYetCommandTests
{
    [Fact]
    public void It_dries_on_and_nobody_asks_before_the_wait_is_over()
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith("14: drying still.\nI won't ask before Fri 10:00", studio.Hear("notyet 14 2 days"), StringComparison.Ordinal);
        Assert.Equal(
            new PieceEvent.NotYet(studio.Now.AddDays(2)), studio.Look(view => view.Pieces.Lines(14))[^1].What);
        Assert.Equal(Stage.Drying, studio.Look(view => view.Pieces.Find(14)!.Stage));
    }

    [Fact]
    public void Under_resin_nothing_dries()
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith("10 is coated and cures", studio.Hear("notyet 10"), StringComparison.Ordinal);
    }
}
