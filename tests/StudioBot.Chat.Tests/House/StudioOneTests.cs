using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

/// <summary>One thing that the studio has set, and how it is changed.</summary>
public sealed class StudioOneTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("studio units us", "studio units", "Units: US")]
    [InlineData("studio unit imperial", "studio unit", "Units: imperial")]
    [InlineData("studio currency GBP", "studio currency", "Currency: GBP")]
    [InlineData("studio scoop 25 ml", "studio scoop", "A scoop: 25 ml")]
    [InlineData("studio sharing equal", "studio sharing?", "Borne equally")]
    public void What_was_set_is_shown_alone(string told, string asked, string shown)
    {
        Assert.DoesNotContain(shown, studio.Hear(asked), StringComparison.Ordinal);
        studio.Now += TimeSpan.FromMinutes(2);
        studio.Tells(told);

        Assert.StartsWith(shown, studio.Hear(asked), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("studio units", 3)]
    [InlineData("studio currency", 4)]
    [InlineData("studio sharing", 3)]
    [InlineData("studio scoop", 1)]
    public void A_steward_sees_how_and_presses_one_of_the_others(string asked, int buttons)
    {
        var reply = studio.Say(asked).Reply;

        Assert.Equal(buttons, reply.Buttons.Count);
        Assert.Contains(reply.Blocks, block => block is Replies.Block.Sample(var way) && way.StartsWith(asked, StringComparison.Ordinal));
        foreach (var other in reply.Buttons.SkipLast(1))
        {
            studio.Now += TimeSpan.FromMinutes(2);
            var before = studio.Hear(asked);
            studio.Tells(other.Line);
            Assert.NotEqual(before, studio.Hear(asked));
        }
    }

    [Fact]
    public void A_member_sees_what_is_set_and_who_sets_it()
    {
        var reply = studio.Say("studio units", by: "Pia").Reply;

        Assert.Contains("Stewards set it.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal("studio", Assert.Single(reply.Buttons).Line);
    }

    [Fact]
    public void The_group_is_shown_with_the_words_that_choose_another()
    {
        var before = studio.Hear("studio group");
        studio.File.Write(session => session.Studio.Set("group", "-100"));

        Assert.StartsWith("No group is the studio's yet", before, StringComparison.Ordinal);
        Assert.StartsWith("The studio has its group", studio.Hear("studio group"), StringComparison.Ordinal);
        Assert.Contains("/studio group here", before, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_beside_a_value_still_means_to_set_it()
    {
        var reply = studio.Say("studio unts us").Reply;

        Assert.Contains("unts", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains(reply.Buttons, button => button.Line.StartsWith("studio units us", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("studio units")]
    [InlineData("studio currency")]
    [InlineData("studio scoop")]
    [InlineData("studio sharing")]
    [InlineData("studio group")]
    public void It_fits_a_phone(string words)
    {
        var reply = Sample.Answer(words)!;

        Assert.InRange(Replies.LineBudget.Of(reply), 2, Replies.LineBudget.Lines);
        Assert.All(reply.Buttons, button => Assert.InRange(button.Label.Length, 1, 20));
    }
}
