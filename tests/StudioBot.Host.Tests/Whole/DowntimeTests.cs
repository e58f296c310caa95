using System.Globalization;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Ticks;
using StudioBot.Records;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Whole;

/// <summary>What members hear after the service was away, and how late they hear what is due while it is there.</summary>
public sealed class DowntimeTests(ITestOutputHelper output) : IDisposable
{
    private const long Nora = 7;
    private const long Pia = 8;
    private const int Things = 40;

    // Eleven in Vienna, a Wednesday in winter: nobody's night for ten hours.
    private static readonly DateTimeOffset Eleven = new(2026, 11, 25, 10, 0, 0, TimeSpan.Zero);

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("00:01:00", false)]
    [InlineData("00:14:00", false)]
    [InlineData("00:16:00", true)]
    [InlineData("08:00:00", true)]
    [InlineData("30.00:00:00", true)]
    [InlineData("400.00:00:00", true)]
    public void After_a_downtime_each_chat_hears_a_few_late_words_or_one_digest_however_often_it_starts(
        string away, bool isDigest)
    {
        var back = Eleven + TimeSpan.Parse(away, CultureInfo.InvariantCulture);
        using (var file = Found())
        {
            Miss(file, Eleven);
        }

        // A hundred starts within ten minutes.
        for (var start = 0; start < 100; start++)
        {
            using var file = StudioFile.Open(folder.StudioPath);
            new DueReminders(file, Studios.Practice).Say(back.AddSeconds(6 * start));
        }

        using var after = StudioFile.Open(folder.StudioPath);
        foreach (var chat in new[] { Nora, Pia })
        {
            var said = Said(after, chat).Where(words => words.Contains("thing", StringComparison.Ordinal)).ToList();
            Assert.Single(said);
            Assert.Equal(isDigest, said[0].StartsWith("This comes late", StringComparison.Ordinal));
            Assert.Equal(!isDigest, said[0].Contains("late)", StringComparison.Ordinal));
            Assert.InRange(said[0].Length, 1, 4096);
            Assert.All(Enumerable.Range(0, Things), thing => Assert.Contains($"thing {thing:00}", said[0], StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task What_is_due_goes_out_within_five_seconds_in_a_busy_hour()
    {
        var clock = new FakeTimeProvider(Eleven);
        using var file = Found();
        var random = new Random(20261126);
        var due = Enumerable.Range(0, 60).ToDictionary(
            thing => $"thing {thing:00}.", _ => Eleven.AddSeconds(random.Next(3600)));
        foreach (var ((words, at), number) in due.Zip(Enumerable.Range(1, 60)))
        {
            Ask(file, number % 2 == 0 ? Nora : Pia, number, words.TrimEnd('.'), at);
        }

        var wire = new RecordingWire(clock);
        var bell = new Bell(clock);
        var reminders = new DueReminders(file, Studios.Practice);
        using var stop = new CancellationTokenSource();
        var sending = Senders.Of(file, wire, clock, bell).Run(stop.Token);
        var said = 0;
        for (var tick = 0; tick <= 1801; tick++)
        {
            if (reminders.Say(clock.GetUtcNow()) is > 0 and var more)
            {
                said += more;
                bell.Ring();
                await Patience.Until(clock, TimeSpan.Zero, () => wire.All.Count == said);
            }

            clock.Advance(Schedule.Often);
        }

        await Patience.End(sending, stop);
        var late = due.Select(one => wire.All.First(sent => sent.Letter.Plain.Contains(one.Key, StringComparison.Ordinal)).At - one.Value)
            .Select(by => by.TotalSeconds).Order().ToList();
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"on time: {late.Count} in an hour, p50 {late[30]} s, p99 {late[59]} s"));
        Assert.InRange(late[30], 0, 2);
        Assert.InRange(late[59], 0, 5);
    }

    private StudioFile Found()
    {
        var file = StudioFile.Open(folder.StudioPath);
        Studios.Found(file, Eleven.AddDays(-60), (Nora, "Nora"), (Pia, "Pia"));
        return file;
    }

    private static void Miss(StudioFile file, DateTimeOffset at)
    {
        for (var thing = 0; thing < Things; thing++)
        {
            Ask(file, Nora, 2 * thing, $"thing {thing:00}", at);
            Ask(file, Pia, 2 * thing + 1, $"thing {thing:00}", at);
        }
    }

    private static void Ask(StudioFile file, long account, int number, string words, DateTimeOffset at) => file.Write(
        session => Requests.Ask(session, session.Members.ByAccount(account)!, number, words, at, Eleven.AddDays(-1)));

    private static List<string> Said(StudioFile file, long chat)
    {
        var said = new List<string>();
        while (file.Write(session => session.Post.ClaimFor(chat)) is { } post)
        {
            said.Add(LetterText.Read(post.Payload).Plain);
            file.Write(session => session.Post.Sent(post.Id, Eleven));
        }

        return said;
    }
}
