namespace StudioBot.Craft.Coats;

/// <summary>What an off-ratio mix may still be used for.</summary>
public enum RatioVerdict
{
    /// <summary>Within 2 %.</summary>
    Fine,

    /// <summary>2 to 5 % off: put it right while it is fresh.</summary>
    Caution,

    /// <summary>More than 5 % off: soft or sticky for good.</summary>
    DoNotPour,
}
