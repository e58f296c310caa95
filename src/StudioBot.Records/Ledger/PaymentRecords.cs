using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Ledger;

/// <summary>Payments among members, and the word of who got them.</summary>
public sealed class PaymentRecords
{
    private readonly SqliteConnection connection;
    private readonly KeptRows kept;

    internal PaymentRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
    }

    private const string Came = """
        insert into payment_receipt (act_id, receipt_act_id)
        values ($payment, $receipt)
        """;

    /// <summary>Who got it says that it came.</summary>
    /// <param name="payment">What came.</param>
    /// <param name="receipt">The act by which they say so.</param>
    /// <exception cref="SqliteException">They said so before.</exception>
    public void Confirm(Payment payment, Act receipt) =>
        kept.Change(receipt, KeptTable.Receipt, payment.ActId, () =>
            connection.Execute(Came, new { payment = payment.ActId, receipt = receipt.Id }));

    private const string Open = """
        select act.id as actId, gave.account, gave.member_id as payerId, got.member_id as receiverId,
               gave.cents, act.happened_at as happenedAt
        from money_entry as own
        join act on act.id = own.act_id
        join money_entry as gave on gave.act_id = act.id and gave.cents > 0
        join money_entry as got on got.act_id = act.id and got.cents < 0 and got.account = 'member'
        where own.member_id = $member
          and act.kind = 'paid'
          and not exists (select 1 from act as answer where answer.undoes_id = act.id)
          and not exists (select 1 from payment_receipt as receipt where receipt.act_id = act.id)
        order by act.id
        """;

    /// <summary>What this member paid to another, or is to have got, and that nobody confirmed or took back; the
    /// oldest first.</summary>
    public IReadOnlyList<Payment> OpenOf(long memberId) =>
        [.. connection.Query<Row>(Open, new { member = memberId }).Select(row => row.From())];

    private sealed record Row(
        long ActId, string Account, long? PayerId, long ReceiverId, long Cents, long HappenedAt)
    {
        public Payment From() => new(
            ActId,
            PayerId is { } payer ? new Account.OfMember(payer) : new Account.OfKitty(),
            ReceiverId,
            new Money(Cents),
            Booked.Moment(HappenedAt));
    }
}
