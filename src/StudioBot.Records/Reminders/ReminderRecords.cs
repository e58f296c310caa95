using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Reminders;

/// <summary>What the bot has to say by itself, each occurrence once: a key is never planned again, done or not.
/// </summary>
public sealed class ReminderRecords
{
    private static readonly StoredWords<ReminderState> States = new(
        (ReminderState.Planned, "planned"), (ReminderState.Held, "held"), (ReminderState.Done, "done"));

    private readonly SqliteConnection connection;
    private readonly KeptRows kept;

    internal ReminderRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
    }

    private const string Columns = """
        select id, kind, subject, chat_id as chatId, member_id as memberId, planned_at as plannedAt, due_at as dueAt,
               rule, zone, occurrence_key as occurrenceKey, state, verdict, done_at as doneAt, act_id as actId
        from reminder

        """;

    internal const string DueNow = Columns + """
        where state <> 'done'
          and due_at <= $now
        order by due_at, id
        limit $limit
        """;

    /// <summary>What is due, the longest due first.</summary>
    public IReadOnlyList<Reminder> Due(DateTimeOffset now, int limit = 500) =>
        Listed(DueNow, new { now = Booked.At(now), limit });

    internal const string OfSubject = Columns + """
        where subject = $subject
        order by id
        """;

    /// <summary>All that was ever planned about this subject, in the order it was planned.</summary>
    public IReadOnlyList<Reminder> About(string subject) => Listed(OfSubject, new { subject });

    internal const string OpenOfSubject = Columns + """
        where subject = $subject
          and kind = $kind
          and state <> 'done'
        order by id
        """;

    /// <summary>What of this kind still waits to be said about this subject, in the order it was planned.</summary>
    public IReadOnlyList<Reminder> WaitingAbout(string kind, string subject) =>
        Listed(OpenOfSubject, new { kind, subject });

    private const string Next = """
        select min(due_at)
        from reminder
        where state <> 'done'
        """;

    /// <summary>When something is due next; none where nothing waits.</summary>
    public DateTimeOffset? NextDue() => Booked.Moment(connection.ExecuteScalar<long?>(Next));

    private const string NotDone = """
        select count(*)
        from reminder
        where state <> 'done'
        """;

    /// <summary>How many wait to be said.</summary>
    public int Waiting() => connection.ExecuteScalar<int>(NotDone);

    private const string NewOne = """
        insert into reminder (
            kind, subject, chat_id, member_id, planned_at, due_at, rule, zone, occurrence_key, act_id)
        values ($kind, $subject, $chat, $member, $planned, $planned, $rule, $zone, $key, $act)
        on conflict (occurrence_key) do nothing
        """;

    /// <summary>Plans a reminder, unless this very one was planned before.</summary>
    /// <param name="what">What, and when.</param>
    /// <param name="act">The act that brings it about, and whose undo lifts it; none: the studio itself.</param>
    /// <returns>Whether it was new.</returns>
    public bool Plan(NewReminder what, Act? act = null) => connection.Execute(NewOne, new
    {
        kind = what.Kind,
        subject = what.Subject,
        chat = what.ChatId,
        member = what.MemberId,
        planned = Booked.At(what.PlannedAt),
        rule = what.Civil?.Rule,
        zone = what.Civil?.Zone,
        key = what.OccurrenceKey,
        act = act?.Id,
    }) > 0;

    private const string Move = """
        update reminder
        set planned_at = $at, due_at = $at, state = 'planned', verdict = null
        where subject = $subject
          and kind = $kind
          and state <> 'done'
        """;

    /// <summary>What is still to be said about this subject moves to another moment.</summary>
    /// <returns>How many moved.</returns>
    public int Replan(string kind, string subject, DateTimeOffset at) =>
        connection.Execute(Move, new { kind, subject, at = Booked.At(at) });

    private const string MoveOne = """
        update reminder
        set planned_at = $at, due_at = $at, state = 'planned', verdict = null
        where id = $id
          and state <> 'done'
        """;

    /// <summary>This one moves to another moment.</summary>
    /// <exception cref="InvalidOperationException">It is done.</exception>
    public void Replan(long id, DateTimeOffset at) =>
        Open(connection.Execute(MoveOne, new { id, at = Booked.At(at) }), id);

    private const string TurnInto = """
        update or ignore reminder
        set planned_at = $at, due_at = $at, rule = $rule, zone = $zone, occurrence_key = $key, state = 'planned',
            verdict = null
        where id = $id
          and state <> 'done'
        """;

    /// <summary>This one, which follows the wall clock, follows another rule or zone from now on.</summary>
    /// <returns>Whether it does: not where what it would be was planned before, or it is done.</returns>
    public bool Follow(long id, NewReminder anew) => connection.Execute(TurnInto, new
    {
        id,
        at = Booked.At(anew.PlannedAt),
        rule = anew.Civil?.Rule,
        zone = anew.Civil?.Zone,
        key = anew.OccurrenceKey,
    }) > 0;

    private const string Keep = """
        update reminder
        set state = 'held', due_at = $until, verdict = $verdict
        where id = $id
          and state <> 'done'
        """;

    /// <summary>This one waits for a better moment; the planned one stays known.</summary>
    /// <exception cref="InvalidOperationException">It is done.</exception>
    public void Hold(long id, DateTimeOffset until, string verdict) =>
        Open(connection.Execute(Keep, new { id, until = Booked.At(until), verdict }), id);

    private const string Settle = """
        update reminder
        set state = 'done', verdict = $verdict, done_at = $at
        where id = $id
          and state <> 'done'
        """;

    /// <summary>This one is said, or will not be: written in the transaction that puts its post.</summary>
    /// <exception cref="InvalidOperationException">It was done before: it must not be said twice.</exception>
    public void Done(long id, string verdict, DateTimeOffset at) =>
        Open(connection.Execute(Settle, new { id, verdict, at = Booked.At(at) }), id);

    private const string OpenOf = """
        select id
        from reminder
        where subject = $subject
          and ($kind is null or kind = $kind)
          and state <> 'done'
        order by id
        """;

    /// <summary>Nothing more is said about this subject; undo of the act puts the pings back.</summary>
    /// <param name="subject">Which.</param>
    /// <param name="act">What makes them needless: a failed coat, a sale.</param>
    /// <param name="kind">Only pings of this kind; none: all.</param>
    /// <returns>How many were lifted.</returns>
    public int Lift(string subject, Act act, string? kind = null)
    {
        var open = connection.Query<long>(OpenOf, new { subject, kind }).AsList();
        foreach (var id in open)
        {
            kept.Change(act, KeptTable.Reminder, id, () => Done(id, "lifted", act.WrittenAt));
        }

        return open.Count;
    }

    private IReadOnlyList<Reminder> Listed(string query, object which) =>
        [.. connection.Query<Row>(query, which).Select(row => row.From())];

    private static void Open(int changed, long id)
    {
        if (changed == 0)
        {
            throw new InvalidOperationException($"Reminder {id} does not wait any more.");
        }
    }

    private sealed record Row(
        long Id,
        string Kind,
        string Subject,
        long? ChatId,
        long? MemberId,
        long PlannedAt,
        long DueAt,
        string? Rule,
        string? Zone,
        string OccurrenceKey,
        string State,
        string? Verdict,
        long? DoneAt,
        long? ActId)
    {
        public Reminder From() => new(
            Id,
            new NewReminder(Kind, Subject, Booked.Moment(PlannedAt), OccurrenceKey)
            {
                ChatId = ChatId,
                MemberId = MemberId,
                Civil = Rule is not null && Zone is not null ? new CivilRule(Rule, Zone) : null,
            },
            States.Read(State),
            Booked.Moment(DueAt),
            Verdict,
            Booked.Moment(DoneAt),
            ActId);
    }
}
