using System.Globalization;
using StudioBot.Records.Backups;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot backup</c>: makes a proven copy, lists those there are, or proves one anew; also while the
/// service runs.</summary>
internal sealed class BackupVerb : Verb
{
    private const string List = "list";
    private const string Verify = "verify";

    /// <inheritdoc/>
    public override string Word => "backup";

    /// <inheritdoc/>
    public override string Usage => "backup [list | verify [FILE]] [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "Makes a proven copy; lists or proves those there are.";

    /// <inheritdoc/>
    public override (int Fewest, int Most) Takes => (0, 2);

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) =>
        Opening.WithPlace(said, place, path => Task.FromResult(Done(said.Words, path, place)));

    /// <summary>A backup in a few words: 1.2 MB, 34 tables, 5,310 rows.</summary>
    public static string InWords(Backup backup) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Size(backup.Bytes)}, {backup.Rows.Count} tables, {backup.Rows.Values.Sum():N0} rows");

    private ExitCode Done(IReadOnlyList<string> words, string path, Workplace place)
    {
        try
        {
            return words switch
            {
                [] => Make(path, place),
                [List] => Listed(BackupFolder.Of(path), place),
                [Verify] => Verified(BackupFolder.Of(path), null, place),
                [Verify, var file] => Verified(BackupFolder.Of(path), file, place),
                _ => Misread(words[^1], place),
            };
        }
        catch (Exception no) when (OpeningTrouble.Of(no, path) is { } trouble)
        {
            return Opening.Told(place, trouble);
        }
    }

    private static ExitCode Make(string path, Workplace place)
    {
        if (!File.Exists(path))
        {
            place.Streams.Error.WriteLine($"There is no studio {path}. Name its folder:  studiobot backup --data DIR");
            return ExitCode.CommandLine;
        }

        var backups = BackupFolder.Of(path);
        var made = backups.Make(BackupKind.Asked, place.Time.GetUtcNow());
        place.Streams.Out.WriteLine($"{made.Name}: {InWords(made)}, proven. It is in {backups.Folder}.");
        return ExitCode.Done;
    }

    private static ExitCode Listed(BackupFolder backups, Workplace place)
    {
        var all = backups.All();
        place.Streams.Out.WriteLine(all.Count == 0
            ? $"There are no backups in {backups.Folder}."
            : $"{"made, UTC",-16}  {"kind",-7}  {"version",7}  {"size",8}  name in {backups.Folder}");
        foreach (var one in all)
        {
            place.Streams.Out.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{one.MadeAt:yyyy-MM-dd HH:mm}  {one.Kind,-7}  {one.Version,7}  {Size(one.Bytes),8}  {one.Name}"));
        }

        return ExitCode.Done;
    }

    private static ExitCode Verified(BackupFolder backups, string? named, Workplace place)
    {
        if (backups.Find(named) is not { } file)
        {
            var data = Path.GetDirectoryName(backups.Folder);
            place.Streams.Error.WriteLine(named is null
                ? $"There are no backups in {backups.Folder}. Make one:  studiobot backup --data {data}"
                : $"There is no file {named}, here or in {backups.Folder}. See  studiobot backup list --data {data}");
            return ExitCode.CommandLine;
        }

        var findings = Findings(file);
        foreach (var finding in findings)
        {
            place.Streams.Error.WriteLine($"{file}: {finding}");
        }

        if (findings.Count > 0)
        {
            return ExitCode.CheckFailed;
        }

        place.Streams.Out.WriteLine($"{file} is good: its SHA-256, its structure, its references, its sums.");
        return ExitCode.Done;
    }

    // What can't be read proves nothing; the data folder is not at fault.
    private static IReadOnlyList<string> Findings(string file)
    {
        try
        {
            return Proof.Of(file);
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            return [$"It can't be read: {no.Message}"];
        }
    }

    private ExitCode Misread(string word, Workplace place)
    {
        place.Streams.Error.WriteLine(
            $"“{word}” is nothing backup does here.{Environment.NewLine}Try  studiobot {Usage}");
        return ExitCode.CommandLine;
    }

    private static string Size(long bytes) => bytes < 1_000_000
        ? string.Create(CultureInfo.InvariantCulture, $"{bytes / 1000.0:0} kB")
        : string.Create(CultureInfo.InvariantCulture, $"{bytes / 1_000_000.0:0.0} MB");
}
