using StudioBot.Craft.Coats;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>
/// A studio with one table of reminders, kept as the service keeps it, that fails the test on the first ping which
/// is doubled, in vain, in quiet hours, or never settled.
/// </summary>
internal sealed class ReminderHistory
{
    private const long Chat = 4;
    private static readonly CivilRule Sunday = new(new TimeOnly(9, 0), DayOfWeek.Sunday);
    private static readonly StudioZone[] Zones =
        [.. new[] { "Europe/Berlin", "America/New_York", "Asia/Tokyo" }.Select(Named)];

    private readonly List<Waiting> waiting = [];
    private readonly HashSet<string> planned = [];
    private readonly HashSet<string> said = [];
    private readonly List<ModelPiece> pieces = [];
    private DateTimeOffset now = new(2026, 3, 20, 12, 0, 0, TimeSpan.Zero);
    private StudioZone zone = Zones[0];
    private bool isWeekMuted;
    private int coats;

    public ReminderHistory()
    {
        Plan(PlannedPing.For(zone.Next(Sunday, now), PingKind.Week, new PingSubject(PingSubjectKind.Studio, 1), Chat));
        Pour(TimeSpan.FromDays(2));
    }

    /// <summary>The kinds of verdict that were given.</summary>
    public HashSet<Type> Verdicts { get; } = [];

    private QuietHours Quiet => new(new TimeOnly(22, 0), new TimeOnly(8, 0), zone);

    private ModelPiece Last => pieces[^1];

    /// <summary>Something happens, and the reminders are looked at, save in a downtime.</summary>
    public void Take(Happening what, TimeSpan time)
    {
        switch (what)
        {
            case Happening.TimePasses: Pass(time); break;
            case Happening.MinutesPass: Pass(time / 100); break;
            case Happening.Downtime: now += time * 5; break;
            case Happening.ClockSetBack: now -= time; break;
            case Happening.Poured: Pour(time * 3); break;
            case Happening.EstimateSlides: Last.ReadyAt += time; break;
            case Happening.NotYet: Last.NotBefore = now.AddDays(2); break;
            case Happening.Coated: Coat(time / 2); break;
            case Happening.CoatUndone: UndoCoat(); break;
            case Happening.Sold: Last.Gone = WhyUnwanted.Sold; break;
            case Happening.Binned: Last.Gone = WhyUnwanted.Binned; break;
            case Happening.WeekMuted: isWeekMuted = true; break;
            case Happening.WeekWanted: isWeekMuted = false; break;
            case Happening.Moved: Move(Zones[time.Minutes % Zones.Length]); break;
        }

        if (what != Happening.Downtime)
        {
            Look();
        }
    }

    /// <summary>A quiet year later, only the coming week waits.</summary>
    public void Settle()
    {
        for (var day = 0; day < 400; day += 8)
        {
            now = zone.InstantOf(zone.DateOf(now).AddDays(8), new TimeOnly(12, 0));
            Look();
        }

        Assert.Equal(PingKind.Week, Assert.Single(waiting).Ping.Kind);
    }

    private static StudioZone Named(string zone) => new(TimeZoneInfo.FindSystemTimeZoneById(zone));

    private void Pass(TimeSpan time)
    {
        for (var step = 0; step < 20; step++)
        {
            now += time / 20;
            Look();
        }
    }

    private void Pour(TimeSpan dries)
    {
        var piece = new ModelPiece(pieces.Count + 1, now + dries);
        pieces.Add(piece);
        PlanReady(piece);
    }

    private void Coat(TimeSpan opensFor)
    {
        if (Last.Gone is not null)
        {
            return;
        }

        coats++;
        var coat = new ModelCoat(
            new PingSubject(PingSubjectKind.Coat, coats),
            new RecoatWindow(
                now.AddHours(3), now.AddHours(6), now.AddHours(7) + opensFor, now.AddHours(30) + opensFor));
        Last.Coats.Add(coat);
        foreach (var moment in WindowPings.Plan(coat.Window, Quiet, now, wakes: false)
            .Append(new PingMoment(PingKind.Torch, now.AddMinutes(10)))
            .Append(new PingMoment(PingKind.Cured, now.AddDays(7))))
        {
            Plan(new PlannedPing(OccurrenceKey.Nth(moment.Kind, coat.Subject, 1), Chat, moment.At));
        }
    }

    private void UndoCoat()
    {
        if (Last.Coats.LastOrDefault(coat => !coat.IsUndone) is not { } coat)
        {
            return;
        }

        coat.IsUndone = true;
        if (!Last.IsCoated && waiting.All(row => row.Ping.Subject != Last.Subject))
        {
            PlanReady(Last);
        }
    }

    private void PlanReady(ModelPiece piece) => Plan(new PlannedPing(
        OccurrenceKey.Nth(PingKind.Ready, piece.Subject, ++piece.Estimates), Chat, piece.ReadyAt));

    private void Move(StudioZone to)
    {
        zone = to;
        foreach (var row in waiting)
        {
            row.Ping = row.Ping.In(to, now);
            row.LookAt = row.Ping.Slot is null ? row.LookAt : row.Ping.At;
        }
    }

    private void Plan(PlannedPing ping)
    {
        Assert.True(planned.Add(ping.Key.ToString()), $"{ping.Key} is planned twice");
        waiting.Add(new Waiting(ping));
    }

    private void Look()
    {
        while (waiting.FirstOrDefault(row => row.LookAt <= now) is { } row)
        {
            Settle(row, PingVerdict.Of(row.Ping, now, StateOf(row.Ping), WishesFor(row.Ping)));
        }
    }

    private void Settle(Waiting row, PingVerdict verdict)
    {
        Verdicts.Add(verdict.GetType());
        if (verdict is PingVerdict.TooLate { Now: var holds })
        {
            Verdicts.Add(holds.GetType());
        }

        switch (verdict)
        {
            case PingVerdict.Hold hold:
                Assert.True(hold.Until > now, "held until the past");
                row.LookAt = hold.Until;
                return;
            case PingVerdict.Replan replan:
                Assert.True(replan.At > now, "planned into the past");
                row.Ping = row.Ping with { At = replan.At };
                row.LookAt = replan.At;
                return;
            case PingVerdict.Superseded superseded:
                waiting.Remove(row);
                Plan(superseded.By);
                return;
            case PingVerdict.Unwanted:
                break;
            default:
                Say(row.Ping, verdict);
                break;
        }

        waiting.Remove(row);
        if (row.Ping.Following is { } following)
        {
            Plan(following);
        }
    }

    private void Say(PlannedPing ping, PingVerdict verdict)
    {
        Assert.True(said.Add(ping.Key.ToString()), $"{ping.Key} is said twice");
        Assert.True(ping.At <= now, $"{ping.Key} is said before its hour");
        Assert.False(Quiet.IsQuiet(now), $"{ping.Key} is said in quiet hours");
        if (verdict is PingVerdict.SendLate late)
        {
            Assert.InRange(late.By, TimeSpan.FromMinutes(1), TimeSpan.FromMinutes(15));
        }

        if (ping.Kind == PingKind.Week)
        {
            Assert.False(isWeekMuted, "a week is said that nobody wants");
            return;
        }

        var piece = pieces.Single(one =>
            one.Subject == ping.Subject || one.Coats.Exists(coat => coat.Subject == ping.Subject));
        Assert.Null(piece.Gone);
        if (piece.Subject == ping.Subject)
        {
            Assert.False(piece.IsCoated, "a coated piece is called ready");
            Assert.True(now >= piece.ReadyAt && !(now < piece.NotBefore), "a wet piece is called ready");
            return;
        }

        var coat = piece.Coats.Single(one => one.Subject == ping.Subject);
        Assert.Same(piece.Coats.FindLast(one => !one.IsUndone), coat);
        if (ping.Kind is PingKind.WindowOpens or PingKind.WindowCloses or PingKind.WindowTonight)
        {
            Assert.Equal(now >= coat.Window.ClosesFrom, verdict is PingVerdict.TooLate { Now: WhatHolds.Closed });
        }
    }

    private SubjectState StateOf(PlannedPing ping)
    {
        if (ping.Kind == PingKind.Week)
        {
            return new SubjectState.Standing(ping.At);
        }

        if (pieces.Find(one => one.Subject == ping.Subject) is { } piece)
        {
            return piece.Gone is { } gone ? new SubjectState.Over(gone)
                : piece.IsCoated ? new SubjectState.Over(WhyUnwanted.Coated)
                : new SubjectState.Standing(piece.ReadyAt);
        }

        var owner = pieces.Single(one => one.Coats.Exists(coat => coat.Subject == ping.Subject));
        var coat = owner.Coats.Single(one => one.Subject == ping.Subject);
        return owner.Gone is { } why ? new SubjectState.Over(why)
            : coat.IsUndone ? new SubjectState.Over(WhyUnwanted.Undone)
            : coat != owner.Coats.FindLast(one => !one.IsUndone) ? new SubjectState.Over(WhyUnwanted.Coated)
            : ping.Kind is PingKind.Torch or PingKind.Cured ? new SubjectState.Standing(ping.At)
            : new SubjectState.Window(ping.At, coat.Window.ClosesFrom);
    }

    private PingWishes WishesFor(PlannedPing ping) => new(Quiet)
    {
        Muted = isWeekMuted ? new HashSet<PingKind> { PingKind.Week } : [],
        NotBefore = pieces.Find(one => one.Subject == ping.Subject)?.NotBefore,
    };

    private sealed class Waiting(PlannedPing ping)
    {
        public PlannedPing Ping { get; set; } = ping;

        public DateTimeOffset LookAt { get; set; } = ping.At;
    }
}
