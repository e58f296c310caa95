using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

public sealed class NumberCommandTests
{
    [Fact]
    public void A_number_is_given_and_waits_for_its_pour()
    {
        using var studio = LiveStudio.Sample();
        var reply = studio.Say("number 30cm panel bloom").Reply;

        Assert.StartsWith("Write 22 under it.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal([22], studio.Look(view => view.Pieces.Reserved()).Select(reserved => reserved.Number));
        Assert.True(studio.Say(reply.Buttons[0].Line).Recorded);
        Assert.Empty(studio.Look(view => view.Pieces.Reserved()));
    }

    [Fact]
    public void Several_surfaces_get_a_number_each()
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith("Write 22 to 24 under them.", studio.Hear("number 2 tiles 10cm + 1 panel 40cm"), StringComparison.Ordinal);
    }
}
