namespace StudioBot.Craft.Drying;

/// <summary>What the odds of a piece being ready call for.</summary>
public enum ReadyAdvice
{
    /// <summary>Leave it.</summary>
    Wait,

    /// <summary>Check it by hand, or weigh it.</summary>
    CheckByHand,

    /// <summary>Likely ready; the maker decides.</summary>
    LikelyReady,
}
