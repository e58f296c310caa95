using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Health;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Ticks;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Health;

/// <summary>A clock that can't be right holds what the bot says by itself, and says why.</summary>
public sealed class ClockCheckTests : IDisposable
{
    private const long Nora = 7;

    // Noon in Vienna.
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 11, 0, 0, TimeSpan.Zero);

    private readonly FakeTimeProvider clock = new(Noon);
    private readonly StudioFile file = StudioFile.OpenInMemory();
    private readonly CapturedLog log = new();
    private readonly LoggerFactory loggers;
    private readonly ClockCheck check;
    private readonly Counts counts = new();
    private readonly ReminderTick tick;
    private long requests;

    public ClockCheckTests()
    {
        loggers = new LoggerFactory([log]);
        Studios.Found(file, Noon.AddDays(-60), (Nora, "Nora"));
        check = new ClockCheck(file, clock, loggers.CreateLogger<ClockCheck>());
        var runs = new TickRuns(clock, loggers.CreateLogger<TickRuns>());
        tick = new ReminderTick(new DueReminders(file, Studios.Practice), check, new Bell(clock), counts, runs, clock);
    }

    public void Dispose()
    {
        file.Dispose();
        loggers.Dispose();
        counts.Dispose();
    }

    [Theory]
    [InlineData(-4, true)]
    [InlineData(-6, false)]
    [InlineData(-60, false)]
    [InlineData(60, true)]
    [InlineData(30 * 24 * 60, true)]
    public void It_may_stand_five_minutes_behind_what_was_last_recorded(int minutes, bool isRight)
    {
        Ask("first", Noon, Noon);
        clock.AdjustTime(Noon.AddMinutes(minutes));
        Assert.Equal(isRight, check.IsRight());
        Assert.Equal(isRight, check.Trouble is null);
    }

    [Fact]
    public void It_can_t_stand_before_the_program_was_released()
    {
        clock.AdjustTime(DateTimeOffset.UnixEpoch);
        Assert.False(check.IsRight());
        Assert.Equal(
            "the clock of this machine stands at 1970-01-01 00:00 UTC, before this program was released "
            + $"({ClockCheck.Released:yyyy-MM-dd} 00:00)",
            check.Trouble);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(-48)]
    [InlineData(1)]
    [InlineData(48)]
    [InlineData(30 * 24)]
    [InlineData(-497_000)] // to 1970
    public void However_it_is_set_each_reminder_is_said_once_and_within_a_minute_of_its_being_right_again(int hours)
    {
        Ask("stir the black", Noon.AddMinutes(-1), Noon.AddDays(-1));
        Ask("soon", Noon.AddMinutes(10), Noon);
        tick.Look();
        clock.AdjustTime(Noon.AddHours(hours));
        for (var minute = 0; minute < 5; minute++)
        {
            tick.Look();
            clock.Advance(TimeSpan.FromMinutes(1));
        }

        clock.AdjustTime(Noon.AddMinutes(10));
        tick.Look();
        tick.Look();
        Assert.Null(check.Trouble);
        var said = Said();
        Assert.Single(said, words => words.Contains("stir", StringComparison.Ordinal));
        Assert.Single(said, words => words.Contains("soon", StringComparison.Ordinal));
        Assert.Equal(hours < 0 ? 1 : 0, said.Count(words => words.Contains("Reminders wait", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_trouble_and_its_end_are_told_once()
    {
        Ask("first", Noon, Noon);
        clock.AdjustTime(Noon.AddDays(-2));
        for (var looks = 0; looks < 10; looks++)
        {
            tick.Look();
        }

        clock.AdjustTime(Noon);
        tick.Look();
        Assert.Equal(2, log.Text.Split("Reminders wait, for the clock").Length);
        Assert.Equal(2, log.Text.Split("The clock can be right again").Length);
    }

    [Fact]
    public void A_clock_that_was_ahead_makes_the_right_one_doubtful_only_until_the_next_record()
    {
        Ask("first", Noon.AddDays(31), Noon.AddDays(30));
        Assert.False(check.IsRight());
        Ask("second", Noon.AddDays(1), Noon);
        Assert.True(check.IsRight());
    }

    private void Ask(string words, DateTimeOffset at, DateTimeOffset now) => file.Write(session =>
        Requests.Ask(session, session.Members.ByAccount(Nora)!, ++requests, words, at, now));

    private List<string> Said()
    {
        var said = new List<string>();
        while (file.Write(session => session.Post.ClaimFor(Nora)) is { } post)
        {
            said.Add(LetterText.Read(post.Payload).Plain);
            file.Write(session => session.Post.Sent(post.Id, Noon));
        }

        return said;
    }
}
