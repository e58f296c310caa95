namespace StudioBot.Craft.Practice;

/// <summary>What a caution is about.</summary>
public enum SafetySubject
{
    /// <summary>Pigment and mica in the air.</summary>
    Powder,

    /// <summary>Uncured resin and hardener on the skin.</summary>
    ResinSkin,

    /// <summary>The air over curing resin.</summary>
    ResinAir,

    /// <summary>A cup of mixed resin that heats itself.</summary>
    CupHeat,

    /// <summary>Spilt hardener.</summary>
    HardenerSpill,

    /// <summary>An open flame over a piece.</summary>
    Torch,

    /// <summary>Dust of cured resin.</summary>
    Sanding,

    /// <summary>What is left over.</summary>
    Waste,

    /// <summary>A turning table.</summary>
    Spinner,

    /// <summary>Signs to stop at and see a doctor.</summary>
    Health,
}
