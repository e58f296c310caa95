using StudioBot.Records;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Sharing;

/// <summary>What a member paid or is to have got, as far as nobody said that it came.</summary>
internal sealed class OpenPayments
{
    private readonly IReadOnlyDictionary<long, string> names;

    /// <summary>Those of one member.</summary>
    public OpenPayments(StudioView view, Member member)
    {
        names = view.Members.Names();
        var open = view.Payments.OpenOf(member.Id);
        ToConfirm = [.. open.Where(payment => payment.To == member.Id)];
        Paid = [.. open.Where(payment => payment.To != member.Id)];
    }

    /// <summary>What waits for their word; the oldest first.</summary>
    public IReadOnlyList<Payment> ToConfirm { get; }

    /// <summary>What they paid, and waits for another's.</summary>
    public IReadOnlyList<Payment> Paid { get; }

    /// <summary>Who paid: a member's name, or the kitty.</summary>
    public string Payer(Payment payment) =>
        payment.From is Account.OfMember { MemberId: var id } ? names[id] : KittyCash.Word;

    /// <summary>Who is to have got it.</summary>
    public string Receiver(Payment payment) => names[payment.To];

    /// <summary>The message that says it came.</summary>
    public string Confirming(Payment payment) => $"received {payment.Sum} from {Payer(payment)}";
}
