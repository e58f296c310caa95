namespace StudioBot.Craft.Air;

/// <summary>May resin be poured in this air?</summary>
public enum ResinAnswer
{
    /// <summary>Yes.</summary>
    Yes,

    /// <summary>Yes, but mind what the reasons say.</summary>
    YesWithCaution,

    /// <summary>No; the ways say what would change that.</summary>
    No,
}
