using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Reminders;

/// <summary>Who wants to be told what, and what is put off.</summary>
public sealed class WishRecords
{
    private const int Minutes = 60;

    private readonly SqliteConnection connection;
    private readonly KeptRows kept;

    internal WishRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
    }

    private const string Wished = """
        select quiet_from_minutes as quietFrom, quiet_until_minutes as quietUntil, woken
        from wish
        where member_id = $member
        """;

    private const string NotWanted = """
        select kind
        from unwanted_ping
        where member_id = $member
        order by kind
        """;

    /// <summary>What this member wishes; who never said anything wishes nothing of their own.</summary>
    public Wishes Of(long memberId)
    {
        var row = connection.QuerySingleOrDefault<Row>(Wished, new { member = memberId });
        return new Wishes
        {
            Quiet = row is { QuietFrom: { } from, QuietUntil: { } until }
                ? new QuietTimes(Time(from), Time(until))
                : null,
            Woken = row is { Woken: > 0 },
            Unwanted = connection.Query<string>(NotWanted, new { member = memberId }).AsList(),
        };
    }

    private const string Keep = """
        insert into wish (member_id, quiet_from_minutes, quiet_until_minutes, woken)
        values ($member, $from, $until, $woken)
        on conflict (member_id) do update
        set quiet_from_minutes = $from, quiet_until_minutes = $until, woken = $woken
        """;

    private const string WantAll = """
        delete from unwanted_ping
        where member_id = $member
        """;

    private const string WantNot = """
        insert into unwanted_ping (member_id, kind)
        values ($member, $kind)
        """;

    /// <summary>From now on this member wishes this.</summary>
    public void Change(long memberId, Wishes wishes, Act act)
    {
        kept.Change(act, KeptTable.Wish, memberId, () => connection.Execute(Keep, new
        {
            member = memberId,
            from = Minute(wishes.Quiet?.From),
            until = Minute(wishes.Quiet?.Until),
            woken = wishes.Woken ? 1 : 0,
        }));
        kept.Change(act, KeptTable.UnwantedPings, memberId, () =>
        {
            connection.Execute(WantAll, new { member = memberId });
            connection.Execute(WantNot, wishes.Unwanted.Select(kind => new { member = memberId, kind }));
        });
    }

    private const string PutOff = """
        insert into snooze (kind, subject, until_at)
        values ($kind, $subject, $until)
        on conflict (kind, subject) do update
        set until_at = max(until_at, $until)
        """;

    /// <summary>Nothing of this kind is said about this subject until then; a longer snooze stays.</summary>
    public void Snooze(string kind, string subject, DateTimeOffset until) =>
        connection.Execute(PutOff, new { kind, subject, until = Booked.At(until) });

    private const string Until = """
        select until_at
        from snooze
        where kind = $kind
          and subject = $subject
          and until_at > $now
        """;

    /// <summary>Until when it is put off; none where it is not.</summary>
    public DateTimeOffset? SnoozedUntil(string kind, string subject, DateTimeOffset now) =>
        Booked.Moment(connection.ExecuteScalar<long?>(Until, new { kind, subject, now = Booked.At(now) }));

    private static long? Minute(TimeOnly? time) => time is { } known ? known.Hour * Minutes + known.Minute : null;

    private static TimeOnly Time(long minute) => new((int)(minute / Minutes), (int)(minute % Minutes));

    private sealed record Row(long? QuietFrom, long? QuietUntil, long Woken);
}
