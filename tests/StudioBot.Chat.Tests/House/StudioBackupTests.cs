using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class StudioBackupTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("backup")]
    [InlineData("studio backup")]
    [InlineData("Backup pls")]
    public void A_steward_gets_the_studio_as_a_file_and_nothing_is_recorded_by_that(string words)
    {
        var before = Acts();
        var reply = studio.Say(words).Reply;

        Assert.True(reply.BringsBackup);
        Assert.Contains("Everybody's records are in it", reply.PlainText, StringComparison.Ordinal);
        Assert.Empty(reply.Buttons);
        Assert.Equal(before, Acts());
    }

    [Fact]
    public void A_member_gets_none()
    {
        var reply = studio.Say("backup", by: "Pia").Reply;

        Assert.True(reply.IsTrouble);
        Assert.False(reply.BringsBackup);
    }

    private int Acts() => studio.Look(view => view.Acts.Recent(null, studio.Now)).Count;
}
