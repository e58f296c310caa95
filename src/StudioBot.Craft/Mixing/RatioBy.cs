namespace StudioBot.Craft.Mixing;

/// <summary>What the parts of a ratio are counted in.</summary>
public enum RatioBy
{
    /// <summary>Parts by volume.</summary>
    Volume,

    /// <summary>Parts by mass, as a scale shows them.</summary>
    Mass,
}
