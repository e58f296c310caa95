namespace StudioBot.Host.Tests.Support;

/// <summary>A folder of its own that goes with the test.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("studiobot-").FullName;

    public string StudioPath => System.IO.Path.Combine(Path, "studio.db");

    public string Write(string name, string text)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
