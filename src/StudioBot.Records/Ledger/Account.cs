namespace StudioBot.Records.Ledger;

/// <summary>Whose money a line is about.</summary>
public abstract record Account
{
    private Account()
    {
    }

    /// <summary>A member's, who may have left.</summary>
    public sealed record OfMember(long MemberId) : Account;

    /// <summary>The shared cash.</summary>
    public sealed record OfKitty : Account;

    /// <summary>The studio as a whole: the other side of what is bought and used.</summary>
    public sealed record OfStudio : Account;
}
