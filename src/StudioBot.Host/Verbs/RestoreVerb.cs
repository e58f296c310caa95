using StudioBot.Records.Backups;
using StudioBot.Records.Schema;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot restore FILE</c>: brings a backup back; what was there is kept aside.</summary>
internal sealed class RestoreVerb : Verb
{
    private const string Latest = "latest";

    /// <inheritdoc/>
    public override string Word => "restore";

    /// <inheritdoc/>
    public override string Usage => "restore FILE|latest [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "Brings a backup back; the old file is kept aside.";

    /// <inheritdoc/>
    public override (int Fewest, int Most) Takes => (1, 1);

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) =>
        Opening.WithPlace(said, place, path => Task.FromResult(Restored(said.Words[0], path, place)));

    private static ExitCode Restored(string named, string path, Workplace place)
    {
        try
        {
            Opening.RefuseMissing(path, place.Machine);
            return Brought(named, path, place);
        }
        catch (Exception no) when (OpeningTrouble.Of(no, path) is { } trouble)
        {
            return Opening.Told(place, trouble);
        }
    }

    private static ExitCode Brought(string named, string path, Workplace place)
    {
        var backups = BackupFolder.Of(path);
        if (FileOf(named, backups) is not { } file)
        {
            var data = Path.GetDirectoryName(path);
            place.Streams.Error.WriteLine(named == Latest
                ? $"There is no good backup in {backups.Folder}. Name a file:  studiobot restore FILE --data {data}"
                : $"There is no file {named}, here or in {backups.Folder}. See  studiobot backup list --data {data}");
            return ExitCode.CommandLine;
        }

        try
        {
            var restored = Restoring.Restore(path, file, place.Time.GetUtcNow());
            return Opening.StudioIn(path, place, _ => Told(restored, file, path, place));
        }
        catch (NewerStudioException newer)
        {
            return Opening.Told(place, new OpeningTrouble(
                ExitCode.Damaged, $"{file}: {newer.Message} Restore it with the newer program. Nothing was changed."));
        }
        catch (RefusedRestoreException no)
        {
            return Opening.Told(place, new OpeningTrouble(
                ExitCode.Damaged, $"{file} is not restored: {no.Message} Nothing was changed."));
        }
    }

    private static string? FileOf(string named, BackupFolder backups) =>
        named != Latest ? backups.Find(named)
        : backups.NewestGood() is { } good ? backups.FileOf(good)
        : null;

    private static ExitCode Told(Restored restored, string file, string path, Workplace place)
    {
        var to = place.Streams.Out;
        to.WriteLine($"{path} is {file} again, and opens.");
        if (!restored.IsByManifest)
        {
            to.WriteLine("No manifest stood beside it: it stood every check but that of its SHA-256.");
        }

        if (restored.KeptAs is { } kept)
        {
            to.WriteLine($"What was there is kept as {kept}.");
        }

        return ExitCode.Done;
    }
}
