namespace StudioBot.Craft.Drying;

/// <summary>What a maker's hand, or a coat, told about a piece.</summary>
public enum MakerSays
{
    /// <summary>Felt and found not dry.</summary>
    NotYet,

    /// <summary>Felt and found dry.</summary>
    Dry,

    /// <summary>A coat lifted or clouded from moisture: it was not dry at the coat.</summary>
    CoatLifted,

    /// <summary>A coat cured clear: it was dry at the coat, which counts in place of the earlier word.</summary>
    CoatCuredClear,
}
