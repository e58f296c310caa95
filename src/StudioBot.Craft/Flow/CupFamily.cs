namespace StudioBot.Craft.Flow;

/// <summary>Who made the rule for a flow cup; numbers don't carry over from one to another.</summary>
public enum CupFamily
{
    /// <summary>ISO 2431.</summary>
    Iso,

    /// <summary>Ford, ASTM D1200.</summary>
    Ford,

    /// <summary>Zahn, ASTM D4212: not made to one specification.</summary>
    Zahn,

    /// <summary>DIN 53211, withdrawn.</summary>
    Din,
}
