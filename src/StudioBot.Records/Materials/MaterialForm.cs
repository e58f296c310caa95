namespace StudioBot.Records.Materials;

/// <summary>In which form a material is kept, and so how it is measured.</summary>
public enum MaterialForm
{
    /// <summary>Poured, and measured by volume.</summary>
    Liquid,

    /// <summary>Spooned, and measured by mass.</summary>
    Powder,

    /// <summary>Counted: cups, tiles, gloves.</summary>
    Counted,

    /// <summary>Mixed here from others, and measured by volume.</summary>
    Mixture,

    /// <summary>Part A of a resin, measured by volume.</summary>
    ResinA,

    /// <summary>Part B of a resin, measured by volume.</summary>
    HardenerB,
}
