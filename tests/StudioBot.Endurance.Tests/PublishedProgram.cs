using System.Diagnostics;
using System.Runtime.InteropServices;

namespace StudioBot.Endurance.Tests;

/// <summary>The program as it is shipped: published once a run, ready to run on this machine.</summary>
internal static class PublishedProgram
{
    private static readonly Lazy<string> Published = new(Publish);

    /// <summary>Where it lies.</summary>
    public static string Path => Published.Value;

    private static string Publish()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        var configuration = folder.Parent!.Name;
        var root = folder;
        while (!File.Exists(System.IO.Path.Combine(root.FullName, "StudioBot.sln")))
        {
            root = root.Parent ?? throw new InvalidOperationException("The solution is not above the tests.");
        }

        var target = System.IO.Path.Combine(folder.FullName, "published");
        using var publish = Process.Start(new ProcessStartInfo(
            "dotnet",
            [
                "publish", "src/StudioBot.Host", "--no-restore", "-c", configuration, "-r", RuntimeInformation.RuntimeIdentifier,
                "-o", target, "-v", "q", "-nologo",
            ])
        {
            WorkingDirectory = root.FullName,
            RedirectStandardOutput = true,
        })!;
        var said = publish.StandardOutput.ReadToEnd();
        publish.WaitForExit();
        Assert.True(publish.ExitCode == 0, said);
        return System.IO.Path.Combine(target, "studiobot.dll");
    }
}
