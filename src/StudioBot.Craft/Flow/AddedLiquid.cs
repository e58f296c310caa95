namespace StudioBot.Craft.Flow;

/// <summary>What was stirred in between two readings.</summary>
public enum AddedLiquid
{
    /// <summary>Nobody said; the readings alone decide.</summary>
    Unnamed,

    /// <summary>Pouring medium: thicker than pigment wetted in varnish, so it raises a trace (common
    /// practice).</summary>
    Medium,

    /// <summary>Varnish, water or flow extender: lowers any reading (common practice).</summary>
    Thinner,
}
