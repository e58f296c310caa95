using System.Diagnostics;
using System.Text.RegularExpressions;

namespace StudioBot.Host.Tests.Support;

/// <summary>The built program as a process of its own.</summary>
internal static partial class BuiltProgram
{
    // Beside our own build: there it has all it needs, also what comes to us with the web server.
    private static readonly string Built = Path.GetFullPath(Path.Combine(
        TestProject().Replace(AppContext.BaseDirectory, Path.Combine("src", "StudioBot.Host")),
        "studiobot.dll"));

    /// <summary>Starts it, with no settings of this machine's in its environment.</summary>
    public static Process Start(
        TempFolder home, IEnumerable<string> arguments, params (string Name, string Value)[] variables) =>
        Start(Built, home, arguments, variables);

    /// <summary>Starts the program that lies there.</summary>
    public static Process Start(
        string program, TempFolder home, IEnumerable<string> arguments, params (string Name, string Value)[] variables)
    {
        // What is published with its own framework starts by itself.
        var start = Path.GetExtension(program) == ".dll"
            ? new ProcessStartInfo("dotnet", [program, .. arguments])
            : new ProcessStartInfo(program, arguments);
        start.RedirectStandardInput = true;
        start.RedirectStandardOutput = true;
        start.RedirectStandardError = true;
        start.WorkingDirectory = home.Path;
        foreach (var name in start.Environment.Keys.Where(IsOurs).ToList())
        {
            start.Environment.Remove(name);
        }

        start.Environment["HOME"] = home.Path;
        start.Environment["XDG_DATA_HOME"] = Path.Combine(home.Path, "data");

        // Many run at once on one machine.
        start.Environment["Health__Port"] = "0";
        foreach (var (name, value) in variables)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    /// <summary>Runs it to its end.</summary>
    public static async Task<Ended> Run(
        TempFolder home, string[] arguments, string input = "", params (string Name, string Value)[] variables)
    {
        using var process = Start(home, arguments, variables);
        using var enough = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        var output = process.StandardOutput.ReadToEndAsync(enough.Token);
        var error = process.StandardError.ReadToEndAsync(enough.Token);
        await process.StandardInput.WriteAsync(input);
        process.StandardInput.Close();
        await process.WaitForExitAsync(enough.Token);
        return new Ended(process.ExitCode, await output, await error);
    }

    private static bool IsOurs(string name) =>
        name.StartsWith("STUDIO", StringComparison.OrdinalIgnoreCase)
        || name.StartsWith("TELEGRAM", StringComparison.OrdinalIgnoreCase)
        || name.StartsWith("HEALTH", StringComparison.OrdinalIgnoreCase)
        || name is "STATE_DIRECTORY" or "NOTIFY_SOCKET" or "NO_COLOR";

    [GeneratedRegex(@"tests.StudioBot\.\w+\.Tests")]
    private static partial Regex TestProject();
}
