using StudioBot.Craft.Reminders;
using StudioBot.Records;
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

    /// <summary>Plans anew what is said of these pieces.</summary>
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
        var waiting = before.Find(one => one.State != ReminderState.Done);
        if (waiting is not null && waiting.What.MemberId != member)
        {
            session.Reminders.Done(waiting.Id, "somebody else's now", turn.Now);
            waiting = null;
        }

        if (waiting is not null)
        {
            if ((waiting.What.PlannedAt - at).Duration() > Alike)
            {
                session.Reminders.Replan(waiting.Id, at);
            }
        }
        else if (!before.Exists(one => IsSaid(one, wanted.Since)))
        {
            var key = OccurrenceKey.Nth(kind, wanted.Subject, before.Count + 1).ToString();
            session.Reminders.Plan(new NewReminder(name, subject, at, key) { MemberId = member }, act);
        }
    }

    private static bool IsSaid(Reminder one, DateTimeOffset? since) =>
        one.Verdict is { } verdict && Said.Contains(verdict) && (since is null || one.DoneAt >= since);
}
