using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Ticks;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;
using StudioBot.Records.Reminders;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Whole;

/// <summary>Random histories of one member's reminders: clocks that jump, deaths, downtime, quiet hours, snoozes, undo,
/// muting and plans made twice. A failure prints the seed, and STUDIOBOT_SEED takes it back; STUDIOBOT_HISTORIES is how
/// many.</summary>
public sealed partial class ReminderHistoriesTests(ITestOutputHelper output) : IDisposable
{
    private const long Nora = 7;
    private const int Often = 2_000;
    private const int MostTicks = 100;

    // A studio grows slow by what is undone in it: its histories are lived in several.
    private const int InOneStudio = 100;

    private static readonly DateTimeOffset Year = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly Dictionary<long, Told> told = [];
    private StudioFile file = null!;
    private Member nora = null!;
    private Random random = null!;
    private DateTimeOffset now;
    private long requests;
    private bool isMuted;
    private bool isDying;
    private bool hasPost;

    [Fact]
    public void Each_occurrence_is_said_at_most_once_and_where_it_is_still_wanted_exactly_once()
    {
        var seed = Number("STUDIOBOT_SEED") ?? Random.Shared.Next();
        var histories = Number("STUDIOBOT_HISTORIES") ?? Often;
        output.WriteLine($"seed {seed}, {histories} histories");
        var said = 0;
        var began = Stopwatch.GetTimestamp();
        for (var history = 0; history < histories; history++)
        {
            if (history % InOneStudio == 0)
            {
                Found();
            }

            random = new Random(unchecked(seed * 31 + history));
            Live();
            foreach (var (number, one) in told)
            {
                var how = $"seed {seed}, history {history}, request {number}: said {one.Times} times, {one}";
                Assert.True(one.Times <= 1, how);
                Assert.True(one.Times == 1 || one.MayBeUnsaid, how);
                said += one.Times;
            }
        }

        output.WriteLine($"{Stopwatch.GetElapsedTime(began).TotalSeconds:0} s: {said} said of {requests} planned");
        Assert.InRange(said, histories / 2, requests);
    }

    public void Dispose() => file?.Dispose();

    private static int? Number(string variable) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    private void Found()
    {
        file?.Dispose();
        file = StudioFile.OpenInMemory();
        Studios.Found(file, Year.AddYears(-1), (Nora, "Nora"));
        nora = file.Read(view => view.Members.ByAccount(Nora))!;
    }

    private void Live()
    {
        told.Clear();
        now = Year.AddMinutes(random.Next(365 * 24 * 60));
        var steps = random.Next(3, 10);
        Ask();
        for (var step = 0; step < steps; step++)
        {
            Step();
        }

        // At the end it is there again, listens to everything, and ticks until nothing waits.
        Mute(false);
        for (var tick = 0; NextDue() is { } due; tick++)
        {
            Assert.True(tick < MostTicks, $"Something waits for ever at {now:O}.");
            now = due > now ? due : now.AddSeconds(2);
            Tick();
        }

        Send();
    }

    private void Step()
    {
        switch (random.Next(13))
        {
            case 0 or 1:
                Ask();
                break;
            case 2 or 3 or 4:
                now = now.AddMinutes(random.Next(1, 90));
                Tick();
                Send();
                break;
            case 5:
                now = now.AddSeconds(random.Next(3));
                Tick();
                Send();
                break;
            case 6:                                   // the machine was off
                now = now.AddHours(random.Next(1, 24 * 40));
                Tick();
                Send();
                break;
            case 7:                                   // the clock was set back
                now = now.AddMinutes(-random.Next(1, 200));
                Tick();
                Send();
                break;
            case 8:                                   // dies before the commit, and with the message on the wire
                isDying = true;
                Tick();
                isDying = false;
                break;
            case 9:                                   // dies behind the commit: nothing is sent yet
                Tick();
                file.Write(session => session.Post.FreeAll());
                break;
            case 10:
                Undo();
                break;
            case 11:
                Mute(!isMuted);
                break;
            case 12:
                PlanAgainOrPutOff();
                break;
        }
    }

    private void Ask()
    {
        var number = ++requests;
        var at = now.AddMinutes(random.Next(-5, 3 * 24 * 60));
        var act = file.Write(session => Requests.Ask(session, nora, number, $"r{number}r", at, now));
        told[number] = new Told(act) { At = at };
    }

    private void Undo()
    {
        var (_, one) = Any();
        file.Write(session => session.Undo.Take(one.Act.Id, new NewAct("undo", nora, "undo", now)));
        one.IsUndone = true;
    }

    private void PlanAgainOrPutOff()
    {
        var number = Any().Key;
        switch (random.Next(3))
        {
            case 0:
                Assert.False(file.Write(session => Requests.Plan(session, nora, number, now)));
                break;
            case 1:
                var until = now.AddMinutes(random.Next(24 * 60));
                file.Write(session => session.Wishes.Snooze(Requests.Kind, Requests.SubjectOf(number), until));
                break;
            default:
                var at = now.AddMinutes(random.Next(24 * 60));
                file.Write(session => session.Reminders.Replan(Requests.Kind, Requests.SubjectOf(number), at));
                break;
        }
    }

    private void Mute(bool wanted)
    {
        if (wanted == isMuted)
        {
            return;
        }

        isMuted = wanted;
        file.Write(session => session.Wishes.Change(
            nora.Id,
            new Wishes { Unwanted = wanted ? [Requests.Kind] : [] },
            session.Acts.Begin(new NewAct("me", nora, "me", now))));
    }

    private KeyValuePair<long, Told> Any() => told.ElementAt(random.Next(told.Count));

    // Beside the coming week, whose row always waits.
    private DateTimeOffset? NextDue() => file.Write(session =>
        session.Reminders.Due(DateTimeOffset.MaxValue, 1000).FirstOrDefault(row => row.What.Civil is null)?.DueAt);

    private void Tick()
    {
        // What is due while it is muted is dropped for good, and need not come. Nobody dies saying nothing.
        if (isMuted)
        {
            foreach (var row in file.Write(session => session.Reminders.Due(now)).Where(row => row.What.Civil is null))
            {
                told[long.Parse(row.What.Subject.Split('/')[1], CultureInfo.InvariantCulture)].WasDueWhileMuted = true;
            }
        }

        var reminders = new DueReminders(file, Studios.Practice, beforeCommit: () =>
        {
            if (isDying)
            {
                throw new DiedException();
            }
        });
        try
        {
            hasPost |= reminders.Say(now) > 0;
        }
        catch (DiedException)
        {
            // The next tick finds all as it was.
        }
    }

    private void Send()
    {
        if (!hasPost)
        {
            return;
        }

        hasPost = false;

        // Far enough ahead for whatever was put before the clock was set back.
        while (file.Write(session => session.Post.Claim(Year.AddYears(9))) is { } post)
        {
            foreach (Match match in Words().Matches(LetterText.Read(post.Payload).Plain))
            {
                told[long.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)].Times++;
            }

            file.Write(session => session.Post.Sent(post.Id, now));
        }
    }

    [GeneratedRegex(@"\br(\d+)r\b")]
    private static partial Regex Words();

    private sealed class DiedException : Exception;

    private sealed record Told(Act Act)
    {
        public DateTimeOffset At { get; init; }

        public int Times { get; set; }

        public bool IsUndone { get; set; }

        public bool WasDueWhileMuted { get; set; }

        public bool MayBeUnsaid => IsUndone || WasDueWhileMuted;
    }
}
