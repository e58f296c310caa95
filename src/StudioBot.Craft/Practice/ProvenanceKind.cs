namespace StudioBot.Craft.Practice;

/// <summary>How well a value of the trade is known.</summary>
public enum ProvenanceKind
{
    /// <summary>Read in a text that the source names.</summary>
    Verified,

    /// <summary>A rule of thumb without a source: a starting guess that a studio's own records replace.</summary>
    CommonPractice,

    /// <summary>Recalled from textbooks, not looked up.</summary>
    Memory,
}
