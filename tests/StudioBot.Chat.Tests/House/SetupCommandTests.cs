using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Tests.House;

/// <summary>The four questions of a new studio, as its steward goes through them by buttons.</summary>
public sealed class SetupCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Who_takes_the_studio_is_asked_for_its_clock_first()
    {
        studio.File.Write(session => session.Claim.Put("ABCDEFGHJK", studio.Now.AddMinutes(15)));

        var welcome = studio.SayFrom(900, "Nora", "join ABCDEFGHJK").Reply;

        Assert.StartsWith("Welcome, Nora.", welcome.PlainText, StringComparison.Ordinal);
        Assert.Contains("1 of 4: Is it", welcome.PlainText, StringComparison.Ordinal);
        Assert.Equal("setup next", welcome.Buttons[0].Line);
    }

    [Fact]
    public void Four_presses_answer_all_and_each_brings_the_next_question()
    {
        Assert.Contains("1 of 4", studio.Hear("setup"), StringComparison.Ordinal);
        Assert.Contains("2 of 4", Pressed("studio zone America/New_York"), StringComparison.Ordinal);
        Assert.Contains("3 of 4", Pressed("studio units us"), StringComparison.Ordinal);
        Assert.Contains("4 of 4", Pressed("studio quiet 21-7"), StringComparison.Ordinal);
        Assert.StartsWith("White: 1000 ml", Pressed("count white 1 l"), StringComparison.Ordinal);
        Assert.StartsWith("Set up", Pressed("setup next"), StringComparison.Ordinal);

        var settings = studio.Look(view => view.Studio.Settings()!);
        Assert.Equal(("America/New_York", UnitSystem.Us), (settings.Zone, settings.Units));
        Assert.DoesNotContain("Setup", studio.Hear("studio"), StringComparison.OrdinalIgnoreCase);
    }

    // 9:00 in UTC on 25 November: 4 in the morning in New York, 9 in London.
    [Fact]
    public void The_clocks_on_the_buttons_are_those_of_their_cities()
    {
        var labels = studio.Say("setup").Reply.Buttons.Select(button => button.Label).ToList();

        Assert.Contains("04:00 New York", labels);
        Assert.Contains("01:00 Los Angeles", labels);
        Assert.InRange(labels.Count, 2, 6);
    }

    [Fact]
    public void What_is_left_as_it_is_keeps_what_was_taken()
    {
        var before = studio.Look(view => view.Studio.Settings()!);
        Assert.False(studio.Say("setup").Reply.IsTrouble);
        foreach (var _ in Enumerable.Range(0, 4))
        {
            studio.Now += TimeSpan.FromMinutes(2);
            Assert.False(studio.Say("setup next").Reply.IsTrouble);
        }

        Assert.Equal(before, studio.Look(view => view.Studio.Settings()!));
    }

    [Fact]
    public void A_setting_told_at_another_time_asks_nothing() =>
        Assert.DoesNotContain("of 4", studio.Hear("studio quiet 21-7"), StringComparison.Ordinal);

    [Fact]
    public void An_answer_that_is_taken_back_is_asked_again()
    {
        Assert.False(studio.Say("setup").Reply.IsTrouble);
        Pressed("studio zone America/New_York");
        Pressed("undo");

        Assert.Contains("1 of 4", Pressed("setup"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("setup")]
    [InlineData("setup next")]
    public void A_question_has_nothing_to_take_back_and_its_answer_has(string words)
    {
        Assert.DoesNotContain(studio.Say(words).Reply.Buttons, button => button.Line.StartsWith("undo", StringComparison.Ordinal));
        studio.Now += TimeSpan.FromMinutes(2);

        Assert.Contains(
            studio.Say("studio quiet 21-7").Reply.Buttons, button => button.Line.StartsWith("undo", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_button_is_a_line_that_can_be_read()
    {
        studio.Now += TimeSpan.FromMinutes(2);
        List<Button> buttons = [.. studio.Say("setup").Reply.Buttons];
        foreach (var _ in Enumerable.Range(0, 3))
        {
            studio.Now += TimeSpan.FromMinutes(2);
            buttons.AddRange(studio.Say("setup next").Reply.Buttons);
        }

        foreach (var button in buttons)
        {
            studio.Now += TimeSpan.FromMinutes(2);
            Assert.False(studio.Say(button.Line).Reply.IsTrouble, button.Line);
        }
    }

    private string Pressed(string line)
    {
        studio.Now += TimeSpan.FromMinutes(2);
        return studio.Hear(line);
    }
}
