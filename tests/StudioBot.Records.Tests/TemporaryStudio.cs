namespace StudioBot.Records.Tests;

/// <summary>A real studio's file in a folder of its own, which goes with the test.</summary>
public sealed class TemporaryStudio : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("studio-");

    public TemporaryStudio() => File = StudioFile.Open(Path);

    public string Path => System.IO.Path.Combine(folder.FullName, "studio.db");

    public StudioFile File { get; private set; }

    /// <summary>Closes the file and opens it again, as a restart would.</summary>
    public void Reopen()
    {
        File.Dispose();
        File = StudioFile.Open(Path);
    }

    public void Dispose()
    {
        File.Dispose();
        folder.Delete(recursive: true);
    }
}
