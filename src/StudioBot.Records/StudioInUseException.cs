namespace StudioBot.Records;

/// <summary>Another program keeps this studio at the moment; two writers would lose each other's place.</summary>
public sealed class StudioInUseException(string path, Exception inner)
    : Exception($"Another program has the studio {path} open.", inner)
{
    /// <summary>The studio's file.</summary>
    public string Path { get; } = path;
}
