namespace StudioBot.Records.Schema;

/// <summary>The file lacks steps that only opening it for writing would apply, or it is no studio yet.</summary>
public sealed class OlderStudioException(int found, int known)
    : Exception($"The studio's file has version {found}, version {known} is needed to look at it.")
{
    /// <summary>The file's version; 0 where no step was ever applied.</summary>
    public int Found { get; } = found;

    /// <summary>The version that is needed.</summary>
    public int Known { get; } = known;
}
