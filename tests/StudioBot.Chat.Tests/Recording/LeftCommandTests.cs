using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

public sealed class LeftCommandTests
{
    // Worked by hand: 318 less 60 less 55 are 203 ml, over 900 cm² 2.26 mm.
    [Fact]
    public void What_was_left_can_be_told_later_and_the_last_figure_holds()
    {
        using var studio = LiveStudio.Sample();
        studio.Say("pour 17 318 ml left 40 caught 55");

        Assert.StartsWith(
            "17: 318 ml mixed, 60 ml left in the cups, 55 ml caught.\n203 ml stay on it: 2.26 mm on the face.",
            studio.Hear("left 60 ml from 17"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_left_is_a_figure_too()
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith("18: 0 ml left in the cups.", studio.Hear("left nothing from 18"), StringComparison.Ordinal);
        Assert.StartsWith("18: 280 ml mixed, 0 ml left in the cups.", studio.Hear("pour 18 280 ml"), StringComparison.Ordinal);
    }
}
