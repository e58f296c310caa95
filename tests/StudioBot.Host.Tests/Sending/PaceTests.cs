using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Sending;

public sealed class PaceTests
{
    private const long Nora = 7;
    private const long Group = -1001;

    private readonly FakeTimeProvider clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));
    private readonly Pace pace;

    public PaceTests() => pace = new Pace(clock);

    [Fact]
    public void A_private_chat_gets_three_at_once_then_one_a_second() =>
        Assert.Equal([0, 0, 0, 1, 2, 3, 4], SecondsOf(Nora, 7));

    [Fact]
    public void A_pause_brings_the_three_back()
    {
        SecondsOf(Nora, 5);
        clock.Advance(TimeSpan.FromSeconds(10));
        var since = clock.GetUtcNow();
        Assert.Equal([0, 0, 0, 1], SecondsOf(Nora, 4, since));
    }

    [Fact]
    public void A_group_gets_eighteen_in_any_minute()
    {
        var seconds = SecondsOf(Group, 60);
        Assert.All(Enumerable.Range(0, seconds.Count - 18), first =>
            Assert.True(seconds[first + 18] - seconds[first] >= 60));
        Assert.Equal(0, seconds[17]);
    }

    [Fact]
    public void All_chats_together_get_twenty_five_a_second()
    {
        for (var chat = 1; chat <= 25; chat++)
        {
            Assert.True(pace.Look().Room > 0);
            pace.Note(chat);
        }

        var full = pace.Look();
        Assert.Equal(0, full.Room);
        Assert.Equal(TimeSpan.FromSeconds(1), full.NextOpening);
        clock.Advance(TimeSpan.FromSeconds(1));
        Assert.True(pace.Look().Room > 0);
    }

    [Fact]
    public void One_chat_s_rest_is_not_another_s()
    {
        SecondsOf(Nora, 3);
        Assert.Equal([Nora], pace.Look().RestingChats);
    }

    [Theory]
    [InlineData(-48)]
    [InlineData(48)]
    public void A_clock_that_is_set_changes_no_pace(int hours)
    {
        var wall = new WallClock(clock);
        var kept = new Pace(wall);
        for (var sends = 0; sends < 3; sends++)
        {
            kept.Note(Nora);
        }

        wall.Set(TimeSpan.FromHours(hours));
        Assert.Equal(TimeSpan.FromSeconds(1), kept.Look().NextOpening);
        clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Empty(kept.Look().RestingChats);
    }

    private List<double> SecondsOf(long chat, int sends, DateTimeOffset? from = null)
    {
        var start = from ?? clock.GetUtcNow();
        var seconds = new List<double>();
        while (seconds.Count < sends)
        {
            var now = pace.Look();
            if (now.Room == 0 || now.RestingChats.Contains(chat))
            {
                clock.Advance(now.NextOpening!.Value);
                continue;
            }

            pace.Note(chat);
            seconds.Add((clock.GetUtcNow() - start).TotalSeconds);
        }

        return seconds;
    }
}
