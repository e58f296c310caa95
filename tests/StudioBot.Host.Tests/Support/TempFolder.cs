namespace StudioBot.Host.Tests.Support;

/// <summary>A folder of its own that goes with the test.</summary>
internal sealed class TempFolder : IDisposable
{
    private const string Memory = "/dev/shm";

    public TempFolder()
        : this(Directory.CreateTempSubdirectory("studiobot-").FullName)
    {
    }

    private TempFolder(string path) => Path = path;

    public string Path { get; }

    public string StudioPath => System.IO.Path.Combine(Path, "studio.db");

    /// <summary>A folder in the machine's memory, where it has a place for that; else on its disk.</summary>
    public static TempFolder InMemory() => Directory.Exists(Memory)
        ? new TempFolder(Directory.CreateDirectory(System.IO.Path.Combine(Memory, $"studiobot-{Guid.NewGuid():N}")).FullName)
        : new TempFolder();

    public string Write(string name, string text)
    {
        var path = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
