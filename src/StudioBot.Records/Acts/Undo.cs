using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Acts;

/// <summary>Takes an act back, whatever it was: no command writes an undo of its own.</summary>
/// <remarks>Lines of the books get their opposite, rows that are no book go back to what they were, the act's reminders
/// are lifted. Nothing is erased.</remarks>
public sealed class Undo
{
    private readonly SqliteConnection connection;
    private readonly ActRecords acts;
    private readonly KeptRows kept;

    internal Undo(SqliteConnection connection, ActRecords acts)
    {
        this.connection = connection;
        this.acts = acts;
        kept = new KeptRows(connection);
    }

    /// <summary>Takes this act back, unless later acts rest on it.</summary>
    /// <param name="actId">Which.</param>
    /// <param name="by">Who takes it back, in which words and when; its kind is not read.</param>
    public Undone Take(long actId, NewAct by) => acts.Find(actId) switch
    {
        null => new Undone.Unknown(),
        { UndoesId: not null } or { Kind: ActRecords.Opening } => new Undone.NotOffered(),
        { UndoneById: { } before } => new Undone.Before(acts.Find(before)!),
        { } act => Take(act, by),
    };

    // A row that cannot go back shows only while others have gone: then all of it is rolled back.
    private Undone Take(Act act, NewAct by)
    {
        connection.Execute("savepoint undoing");
        var undone = TakeAlong(act, by);
        if (undone is Undone.Done)
        {
            connection.Execute("release undoing");
            return undone;
        }

        connection.Execute("rollback to undoing; release undoing");
        (connection as StudioConnection)?.CountTakenBack();
        return undone;
    }

    // What the studio wrote by itself goes along, the last first; what a member wrote stays, and so does all of it.
    private Undone TakeAlong(Act act, NewAct by)
    {
        var later = acts.These(Later(act));
        if (later.Where(one => !IsOurs(one)).ToList() is [_, ..] theirs)
        {
            return new Undone.RestsOn(theirs);
        }

        List<Act> along = [];
        foreach (var ours in later.Reverse().Where(one => !along.Exists(gone => gone.Id == one.Id)))
        {
            if (TakeAlong(ours, by) is not Undone.Done done)
            {
                return new Undone.RestsOn([ours]);
            }

            along.AddRange([.. done.Along, done.What]);
        }

        var answer = acts.Begin(by with { Kind = ActRecords.Undoing }, act.Id);
        AnswerBooks(act, answer);
        if (kept.Restore(act.Id) is { } obstacle)
        {
            return new Undone.RestsOn(acts.These([.. obstacle.Acts]));
        }

        connection.Execute(Lift, new { at = Booked.At(answer.WrittenAt) });
        return new Undone.Done(act with { UndoneById = answer.Id }, answer) { Along = along };
    }

    private static bool IsOurs(Act act) => act is { Author: null, Kind: not ActRecords.Opening };

    // Stock: what drew more than would have been there without this act, in units or in cents, or touched a lot that
    // came by it; a later count, which found the level that this act had left. Pieces: what happened to one that came
    // by this act, or changed a stage again. Batches and numbers: a piece poured since; a batch read since.
    // Payments: the word that it came.
    private const string Resting = """
        with mine as materialized (
            select lot_id, material_id
            from stock_entry
            where act_id = $act),
        without as (
            select entry.act_id, entry.lot_id,
                   sum(coalesce(entry.microlitres, entry.milligrams, entry.pieces)) over before as still_there,
                   sum(entry.cents) over before as still_worth
            from stock_entry as entry
            where entry.lot_id in (select lot_id from mine)
              and entry.act_id <> $act
              and entry.undoes_id is null
              and not exists (select 1 from stock_entry as answer where answer.undoes_id = entry.id)
            window before as (partition by entry.lot_id order by entry.id)),
        resting as (
            select without.act_id as id
            from without
            join lot on lot.id = without.lot_id
            where without.still_there < 0
               or lot.act_id = $act
               or without.still_worth < 0
               or (without.still_there = 0 and without.still_worth <> 0)
            union
            select entry.act_id
            from stock_entry as entry
            where entry.material_id in (select material_id from mine)
              and entry.reason = 'counted'
              and entry.undoes_id is null
            union
            select line.act_id
            from piece
            join live_piece_event as line on line.piece_id = piece.id
            where piece.act_id = $act
            union
            select line.act_id
            from live_piece_event as changed
            join live_piece_event as line on line.piece_id = changed.piece_id
            where changed.act_id = $act
              and changed.stage is not null
              and line.stage is not null
            union
            select piece.act_id
            from batch
            join piece on piece.batch_id = batch.id
            where batch.act_id = $act
              and piece.undone_id is null
            union
            select reading.act_id
            from batch
            join flow_reading as reading on reading.batch_id = batch.id
            where batch.act_id = $act
              and reading.undone_id is null
            union
            select gel.act_id
            from batch
            join batch_gel as gel on gel.batch_id = batch.id
            where batch.act_id = $act
              and gel.undone_id is null
            union
            select piece.act_id
            from piece_number as given
            join piece on piece.number = given.number and piece.undone_id is null
            where given.act_id = $act
            union
            select receipt_act_id
            from payment_receipt
            where act_id = $act)
        select resting.id
        from resting
        join act on act.id = resting.id
        where resting.id > $act
          and act.undoes_id is null
          and not exists (select 1 from act as answer where answer.undoes_id = act.id)
        order by resting.id
        """;

    private List<long> Later(Act act) => connection.Query<long>(Resting, new { act = act.Id }).AsList();

    // What fills goes before what draws, so that no lot is short on the way.
    private const string AnswerStock = """
        insert into stock_entry (
            act_id, material_id, lot_id, microlitres, milligrams, pieces, cents, reason, undoes_id)
        select $answer, material_id, lot_id, -microlitres, -milligrams, -pieces, -cents, reason, id
        from stock_entry
        where act_id = $act
        order by coalesce(microlitres, milligrams, pieces), id
        """;

    private const string AnswerMoney = """
        insert into money_entry (act_id, account, member_id, cents, undoes_id)
        select $answer, account, member_id, -cents, id
        from money_entry
        where act_id = $act
        order by id
        """;

    private const string AnswerPieces = """
        insert into piece_event (act_id, piece_id, kind, undoes_id)
        select $answer, piece_id, 'undone', id
        from piece_event
        where act_id = $act
        order by id desc
        """;

    private const string Withdraw = """
        update lot set undone_id = $answer where act_id = $act;
        update batch set undone_id = $answer where act_id = $act;
        update workshop set undone_id = $answer where act_id = $act;
        update piece set undone_id = $answer where act_id = $act;
        update air_reading set undone_id = $answer where act_id = $act;
        update flow_reading set undone_id = $answer where act_id = $act;
        update batch_gel set undone_id = $answer where act_id = $act;
        update invitation set expires_at = min(expires_at, $at) where act_id = $act and used_at is null
        """;

    // Of every act that was taken back: one that a later act had lifted comes back when that one is taken back.
    private const string Lift = """
        update reminder
        set state = 'done', verdict = 'undone', done_at = $at
        where act_id in (select undoes_id from act where undoes_id is not null)
          and state <> 'done'
        """;

    private void AnswerBooks(Act act, Act answer)
    {
        var both = new { act = act.Id, answer = answer.Id, at = Booked.At(answer.WrittenAt) };
        foreach (var statement in new[] { AnswerStock, AnswerMoney, AnswerPieces, Withdraw })
        {
            connection.Execute(statement, both);
        }
    }
}
