namespace StudioBot.Records.Post;

/// <summary>What came of a press.</summary>
public abstract record PressVerdict
{
    private PressVerdict()
    {
    }

    /// <summary>It counts, this once: its owner has said this line.</summary>
    public sealed record Said(string Line, bool Agrees = false) : PressVerdict;

    /// <summary>There is no such button in this chat.</summary>
    public sealed record Unknown : PressVerdict;

    /// <summary>It is somebody else's.</summary>
    public sealed record SomebodyElses : PressVerdict;

    /// <summary>It was pressed before.</summary>
    public sealed record UsedBefore : PressVerdict;

    /// <summary>It is too old.</summary>
    public sealed record Expired : PressVerdict;
}
