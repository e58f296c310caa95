using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Reminders;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Pings;

/// <summary>Keeps the table of reminders in step with what is known: what is wanted is planned, what has moved is
/// moved.
/// </summary>
/// <remarks>What is no longer wanted stays, and finds at its hour that there is nothing to say.</remarks>
internal static class PingPlans
{
    // A shift smaller than this is not worth a row.
    private static readonly TimeSpan Alike = TimeSpan.FromMinutes(1);

    private static readonly HashSet<string> Said = [PingRound.Sent, PingRound.SentLate, PingRound.Digested];

    /// <summary>Plans anew what is said of these pieces, and of the materials that the act moved.</summary>
    /// <param name="session">Where the table is.</param>
    /// <param name="turn">What is known now.</param>
    /// <param name="pieces">Which.</param>
    /// <param name="act">The act that brings it about, whose undo lifts it; none: nobody's.</param>
    public static void Renew(StudioSession session, PingTurn turn, IEnumerable<int> pieces, Booked? act)
    {
        foreach (var piece in pieces.Where(piece => turn.Piece(piece) is not null))
        {
            foreach (var ping in PingCatalogue.All)
            {
                foreach (var wanted in ping.Wants(piece, turn))
                {
                    Plan(session, turn, ping.Sheet.Kind, wanted, turn.AddresseeOf(piece)?.Id, act);
                }
            }
        }

        if (act is not null)
        {
            RenewShelf(session, turn, [.. session.Stock.MovedBy(act).Union(session.Workshops.TakenBy(act))], act);
        }
    }

    /// <summary>Plans what is said of these materials to those who keep house or mixed them.</summary>
    /// <param name="session">Where the table is.</param>
    /// <param name="turn">What is known now.</param>
    /// <param name="materials">Which.</param>
    /// <param name="act">The act that moved them, whose undo lifts it; none: nobody's.</param>
    public static void RenewShelf(
        StudioSession session, PingTurn turn, IReadOnlyCollection<long> materials, Booked? act)
    {
        if (materials.Count == 0)
        {
            return;
        }

        foreach (var hearer in turn.HearersOf(materials))
        {
            var unwanted = session.Wishes.Of(hearer.Id).Unwanted;
            foreach (var ping in PingCatalogue.All.Where(ping => !unwanted.Contains(ping.Sheet.Kind.ToString())))
            {
                foreach (var wanted in materials.SelectMany(material => ping.WantsOf(material, hearer, turn)))
                {
                    Plan(session, turn, ping.Sheet.Kind, wanted, hearer.Id, act);
                }
            }
        }
    }

    /// <summary>When this was last said of this subject to this member; none where it never was.</summary>
    public static DateTimeOffset? LastSaid(PingKind kind, PingSubject subject, Member member, StudioView view)
    {
        var name = kind.ToString();
        return view.Reminders.About(PingSubjects.Kept(subject))
            .Where(one => one.What.Kind == name && one.What.MemberId == member.Id && IsSaid(one, null))
            .Max(one => one.DoneAt);
    }

    private static void Plan(
        StudioSession session, PingTurn turn, PingKind kind, Wanted wanted, long? member, Booked? act)
    {
        // What is about minutes is not planned once they have gone by.
        if (member is null || (PingPolicy.Of(kind).Lapses && wanted.At < turn.Now))
        {
            return;
        }

        var subject = PingSubjects.Kept(wanted.Subject);
        var name = kind.ToString();
        List<Reminder> before = [.. session.Reminders.About(subject).Where(one => one.What.Kind == name)];
        var at = wanted.At > turn.Now ? wanted.At : turn.Now;
        List<Reminder> own = [.. before.Where(one => one.What.MemberId == member)];
        if (wanted.Subject.Kind is not (PingSubjectKind.Material or PingSubjectKind.Lot))
        {
            // A piece has one who hears of it: somebody else by now.
            foreach (var other in before.Except(own).Where(one => one.State != ReminderState.Done))
            {
                session.Reminders.Done(other.Id, "somebody else's now", turn.Now);
            }
        }

        if (own.Find(one => one.State != ReminderState.Done) is { } waiting)
        {
            if (wanted.Moves && (waiting.What.PlannedAt - at).Duration() > Alike)
            {
                session.Reminders.Replan(waiting.Id, at);
            }
        }
        else if (!own.Exists(one => IsSaid(one, wanted.Since)))
        {
            var key = OccurrenceKey.Nth(kind, wanted.Subject, before.Count + 1).ToString();
            session.Reminders.Plan(new NewReminder(name, subject, at, key) { MemberId = member }, act);
        }
    }

    private static bool IsSaid(Reminder one, DateTimeOffset? since) =>
        one.Verdict is { } verdict && Said.Contains(verdict) && (since is null || one.DoneAt >= since);
}
