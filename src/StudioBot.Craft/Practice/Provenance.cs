namespace StudioBot.Craft.Practice;

/// <summary>Where a value of the trade comes from.</summary>
/// <param name="Kind">How well it is known.</param>
/// <param name="Source">The text it was read in, or what narrows it; always there for a verified value.</param>
public sealed record Provenance(ProvenanceKind Kind, string? Source = null)
{
    /// <summary>As a reply says it: common practice; from memory; or the source itself.</summary>
    public string Words => Kind switch
    {
        ProvenanceKind.CommonPractice => "common practice",
        ProvenanceKind.Memory => "from memory",
        _ => Source ?? "verified",
    };
}
