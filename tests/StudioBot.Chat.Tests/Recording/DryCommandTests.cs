using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class DryCommandTests
{
    [Fact]
    public void The_makers_word_makes_it_ready()
    {
        using var studio = LiveStudio.Sample();
        var reply = studio.Say("17 and 18 are dry").Reply;

        Assert.StartsWith("17 and 18 are ready to coat.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal("resin 17 18", reply.Buttons[0].Line);
        Assert.Equal(Stage.Ready, studio.Look(view => view.Pieces.Find(18)!.Stage));
    }

    [Theory]
    [InlineData("dry 10", "10 is coated and cures: only a drying piece gets dry. Nothing recorded.")]
    [InlineData("dry 14", "14 is ready to coat already. Nothing recorded.")]
    [InlineData("dry 17 1", "1 is sold: only a drying piece gets dry. Nothing recorded.")]
    public void What_does_not_dry_is_named_and_nothing_is_recorded(string words, string trouble)
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith(trouble, studio.Hear(words), StringComparison.Ordinal);
        Assert.Equal(Stage.Drying, studio.Look(view => view.Pieces.Find(17)!.Stage));
    }
}
