namespace StudioBot.Craft.Pours;

/// <summary>How a pour came out.</summary>
public enum PourEnd
{
    /// <summary>There was enough, so the need is what was used.</summary>
    Enough,

    /// <summary>It ran short, so the need is more than what was used.</summary>
    RanShort,
}
