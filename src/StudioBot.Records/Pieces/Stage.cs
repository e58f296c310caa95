namespace StudioBot.Records.Pieces;

/// <summary>How far a piece is.</summary>
public enum Stage
{
    /// <summary>Poured, and not yet dry enough to coat.</summary>
    Drying,

    /// <summary>Dry enough to coat.</summary>
    Ready,

    /// <summary>Coated with resin that still cures.</summary>
    Coated,

    /// <summary>The resin is fully cured.</summary>
    Cured,

    /// <summary>Its maker keeps it.</summary>
    Kept,

    /// <summary>Sold.</summary>
    Sold,

    /// <summary>Thrown away.</summary>
    Bin,
}
