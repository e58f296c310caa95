namespace StudioBot.Records.Schema;

/// <summary>The file was written by a newer program; this one would misread it and leaves it alone.</summary>
public sealed class NewerStudioException(int found, int known)
    : Exception($"The studio's file has version {found}, this program knows versions up to {known}.")
{
    /// <summary>The file's version.</summary>
    public int Found { get; } = found;

    /// <summary>The newest version this program knows.</summary>
    public int Known { get; } = known;
}
