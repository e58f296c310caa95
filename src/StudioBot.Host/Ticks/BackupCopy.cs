using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace StudioBot.Host.Ticks;

/// <summary>The house's own program that takes each night's backup to another place. It is started by itself, with no
/// shell between: its arguments are the backup's path and its manifest's.</summary>
/// <param name="program">Its whole path; none: nothing is run.</param>
/// <param name="longest">How long it may take.</param>
internal sealed class BackupCopy(string? program, TimeSpan longest)
{
    /// <summary>How long it may take, as the service has it: a slow line and a large studio.</summary>
    public static readonly TimeSpan UsualLongest = TimeSpan.FromMinutes(15);

    private const int MostLetters = 200;

    private static readonly TimeSpan LongestWords = TimeSpan.FromSeconds(5);

    // It gets none of what the service itself knows of its token.
    private static readonly string[] Withheld = ["TELEGRAM", "STUDIOBOT", "CREDENTIALS_DIRECTORY", "NOTIFY_SOCKET"];

    /// <summary>How it is called for this backup, to be tried by hand.</summary>
    public string Line(string backup, string manifest) => $"{program} {backup} {manifest}";

    /// <summary>Runs it to its end. Why the backup is not copied, in one line; none where it is, or where there is no
    /// such program.</summary>
    /// <param name="backup">The backup's whole path.</param>
    /// <param name="manifest">Its manifest's whole path.</param>
    public string? Run(string backup, string manifest)
    {
        if (program is null)
        {
            return null;
        }

        try
        {
            using var run = Process.Start(Start(program, backup, manifest))!;
            return Ended(run);
        }
        catch (Win32Exception no)
        {
            return $"{program} can't be started: {no.Message}";
        }
    }

    private static ProcessStartInfo Start(string program, string backup, string manifest)
    {
        var start = new ProcessStartInfo(program, [backup, manifest])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetDirectoryName(backup)!,
        };
        foreach (var name in start.Environment.Keys.Where(IsWithheld).ToList())
        {
            start.Environment.Remove(name);
        }

        return start;
    }

    private static bool IsWithheld(string name) =>
        Withheld.Any(prefix => name.StartsWith(prefix, StringComparison.OrdinalIgnoreCase));

    private string? Ended(Process run)
    {
        run.StandardInput.Close();
        var said = run.StandardError.ReadToEndAsync();
        _ = run.StandardOutput.BaseStream.CopyToAsync(Stream.Null);
        if (!run.WaitForExit(longest))
        {
            run.Kill(entireProcessTree: true);
            return string.Create(CultureInfo.InvariantCulture, $"{program} took over {longest} and was ended.");
        }

        if (run.ExitCode == 0)
        {
            return null;
        }

        // One that handed its mouth to another, which goes on, is not waited for.
        var words = said.Wait(LongestWords) ? said.Result.Trim() : "";
        var last = words.Length > 0 ? words.Split('\n')[^1] : null;
        return $"{program} ended with {run.ExitCode}{(last is null ? ", and said nothing." : ": " + Short(last))}";
    }

    private static string Short(string said) => said.Length > MostLetters ? said[..MostLetters] + "…" : said;
}
