using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Tests.Reading;

public sealed class FirstNamesTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public FirstNamesTests()
    {
        studio.Tells("me name Pia Berg", "Pia");
        studio.Tells("count white 1 L");
    }

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("paid 30 to Pia")]
    [InlineData("paid 30 to Pia Berg")]
    [InlineData("paid 30 to pia berg")]
    public void One_Pia_alone_is_meant_by_her_first_name(string words)
    {
        Assert.StartsWith("30.00 paid to Pia Berg.", studio.Tells(words), StringComparison.Ordinal);
        Assert.Equal(-3000, studio.Balances()["Pia Berg"]);
    }

    [Theory]
    [InlineData("paid 30 to Pia", "paid 30 to Pia Berg", "paid 30 to Pia Holm")]
    [InlineData("used 20 ml white for Pia", "used 20 ml white for Pia Berg", "used 20 ml white for Pia Holm")]
    [InlineData("Pia used 20 ml white", "Pia Berg used 20 ml white", "Pia Holm used 20 ml white")]
    [InlineData("pour 20cm panel bloom 4 colours for Pia", "pour 20cm panel bloom 4 colours for Pia Berg", "pour 20cm panel bloom 4 colours for Pia Holm")]
    [InlineData("balance Pia", "balance Pia Berg", "balance Pia Holm")]
    public void Of_two_it_is_asked_which_and_nothing_is_recorded(string words, string first, string second)
    {
        AddHolm();

        var reply = studio.Refuses(words);

        Assert.StartsWith("“Pia” is Pia Berg or Pia Holm: which?", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal([("Pia Berg", first), ("Pia Holm", second)], reply.Buttons.Select(button => (button.Label, button.Line)));
        foreach (var line in new[] { first, second })
        {
            Assert.DoesNotContain("which?", studio.Say(line, agreed: true).Reply.PlainText, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_whole_name_says_which()
    {
        AddHolm();
        studio.Tells("paid 30 to Pia Holm");
        Assert.Equal(-3000, studio.Balances()["Pia Holm"]);
        Assert.StartsWith("Pia Holm owes the studio 30.00", studio.Hear("balance Pia Holm"), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_one_is_Pia_and_nothing_else_she_is_taken_only_once_that_is_agreed_to()
    {
        studio.File.Write(session => session.Members.Add("Pia", Role.Member, studio.Now));

        var reply = studio.Refuses("paid 30 to Pia");
        Assert.Contains("“Pia” is Pia here, or Pia Berg: which?", reply.PlainText, StringComparison.Ordinal);
        studio.Tells(Assert.Single(reply.Buttons).Line, agreed: true);
        Assert.Equal(-3000, studio.Balances()["Pia"]);
        studio.Tells("paid 20 to Pia Berg");
        Assert.StartsWith("Pia owes the studio 30.00", studio.Hear("balance Pia"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_Pia_can_be_invited_and_her_figure_be_typed()
    {
        var invited = studio.Tells("members invite Pia Holm");
        Assert.StartsWith("An invitation for Pia Holm, as a member.", invited, StringComparison.Ordinal);
        Assert.StartsWith("An invitation for Jonas, as a steward.", studio.Tells("invite Jonas steward"), StringComparison.Ordinal);

        studio.File.Write(session => session.Members.Add("Pia Berg 2", Role.Member, studio.Now));
        studio.Tells("paid 30 to Pia Berg 2");
        Assert.Equal(-3000, studio.Balances()["Pia Berg 2"]);
        studio.Tells("me name Pia Holm", "Pia Berg 2");
        Assert.Equal(-3000, studio.Balances()["Pia Holm"]);
    }

    [Fact]
    public void A_name_is_one_members_only_and_can_be_taken_back()
    {
        Assert.StartsWith("“Mira” is somebody's name here already", studio.Refuses("me name Mira", "Pia Berg").PlainText, StringComparison.Ordinal);
        Assert.True(studio.Say("undo", "Pia Berg").Recorded);
        studio.Tells("paid 30 to Pia");
        Assert.Equal(-3000, studio.Balances()["Pia"]);
    }

    private void AddHolm() => studio.File.Write(session => session.Members.Add("Pia Holm", Role.Member, studio.Now));
}
