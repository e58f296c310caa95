using System.Diagnostics;
using System.Runtime.InteropServices;

namespace StudioBot.Endurance.Tests;

/// <summary>Publishes the program, ready to run on this machine.</summary>
internal static class Publishing
{
    /// <summary>Publishes it from the sources above the running program.</summary>
    /// <param name="target">Into which folder.</param>
    /// <param name="options">What else the publishing is told.</param>
    /// <returns>Whether that worked, and what it said.</returns>
    public static (bool Works, string Said) Into(string target, params IEnumerable<string> options)
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "StudioBot.sln")))
        {
            root = root.Parent ?? throw new InvalidOperationException("The solution is not above the running program.");
        }

        using var publish = Process.Start(new ProcessStartInfo(
            "dotnet",
            [
                "publish", "src/StudioBot.Host", "-r", RuntimeInformation.RuntimeIdentifier, "-o", target, "-v", "q", "-nologo",
                .. options,
            ])
        {
            WorkingDirectory = root.FullName,
            RedirectStandardOutput = true,
        })!;
        var said = publish.StandardOutput.ReadToEnd();
        publish.WaitForExit();
        return (publish.ExitCode == 0, said);
    }
}
