namespace StudioBot.Craft.Flow;

/// <summary>Which liquid brings a cup nearer to its target.</summary>
public enum NextLiquid
{
    /// <summary>More of what was added between the readings.</summary>
    SameAgain,

    /// <summary>More of what was there at first, for the target has been passed.</summary>
    FirstBack,
}
