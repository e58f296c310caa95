namespace StudioBot.Craft.Drying;

/// <summary>What became of a piece's weighings in its ready day.</summary>
public enum WeighingsUse
{
    /// <summary>There are none.</summary>
    None,

    /// <summary>Fewer than two since the skin closed: noted, not used yet.</summary>
    TooFew,

    /// <summary>The piece holds less water than 20 times the weighing's deviation: shown, not used.</summary>
    ScaleTooRough,

    /// <summary>Used.</summary>
    Used,
}
