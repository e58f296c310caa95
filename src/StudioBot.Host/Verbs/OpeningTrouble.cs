using System.Globalization;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Schema;

namespace StudioBot.Host.Verbs;

/// <summary>Why a studio can't be had, and what helps, in one line.</summary>
/// <param name="Code">How the program ends.</param>
/// <param name="Line">Cause and way out.</param>
internal sealed record OpeningTrouble(ExitCode Code, string Line)
{
    /// <summary>What this exception means for who called the program; none where it is a mistake of ours.</summary>
    /// <param name="no">What opening, backing up or restoring threw.</param>
    /// <param name="path">The studio's file.</param>
    public static OpeningTrouble? Of(Exception no, string path) => no switch
    {
        StudioInUseException => new(
            ExitCode.InUse, $"Another studiobot has {path} open. Stop it first, or name another --data."),
        BackupUnderWayException busy => new(ExitCode.InUse, $"{busy.Message} Try again in a minute."),
        NewerStudioException newer => new(ExitCode.Damaged, $"{path}: {newer.Message} Use the newer program."),
        OlderStudioException older => new(
            ExitCode.Damaged, $"{path}: {older.Message} Start the service once to bring it up to date."),
        LostStudioException or IOException or UnauthorizedAccessException or UnreadableStudioException
            when Directory.Exists(path) => new(
                ExitCode.CannotWrite,
                $"{path} is a folder; a studio is a file. Move it away, or name another folder with --data."),
        LostStudioException lost => new(ExitCode.Damaged, $"{lost.Message} {WayBack(path)}"),
        UnreadableStudioException { IsDamaged: true } broken => new(
            ExitCode.Damaged, $"{path} is damaged or no studio: {Ended(broken.Message)} {WayBack(path)}"),
        UnprovenBackupException { IsStudioDamaged: true } broken => new(
            ExitCode.Damaged, $"{path} is damaged: {Ended(broken.Message)} {WayBack(path)}"),
        UnprovenBackupException unproven => new(
            ExitCode.CannotWrite,
            $"The copy in {FolderOf(path)} did not stand its proof: {Ended(unproven.Message)} Look at that disk."),
        DirectoryNotFoundException when Path.GetDirectoryName(FolderOf(path)) is { } above && File.Exists(above) => new(
            ExitCode.CannotWrite, $"{above} is a file, not a folder. Name another folder with --data."),
        DirectoryNotFoundException when Path.GetDirectoryName(FolderOf(path)) is { } above
            && !Directory.Exists(above) => new(
                ExitCode.CannotWrite, $"There is no folder {above}. Mount its disk, or make it:  mkdir -p {above}"),
        UnauthorizedAccessException or UnreadableStudioException { IsForbidden: true } => new(
            ExitCode.CannotWrite,
            $"User {Environment.UserName} can't write {FolderOf(path)}. Make it theirs and writable:  "
                + $"sudo chown -R {Environment.UserName} {FolderOf(path)} && chmod -R u+rwX {FolderOf(path)}"),
        IOException or UnreadableStudioException or UnwritableStudioException => new(
            ExitCode.CannotWrite,
            $"Can't write {path}: {Ended(no.Message)} Put that right, or name another folder with --data."),
        _ => null,
    };

    private static string FolderOf(string path) => Path.GetDirectoryName(path)!;

    private static string Ended(string why) => why.TrimEnd('.', ' ') + ".";

    private static string WayBack(string path)
    {
        var backups = BackupFolder.Of(path);
        try
        {
            return backups.NewestGood() is not { } good
                ? $"There is no good backup in {backups.Folder}. Bring back one that is kept elsewhere:  "
                    + $"studiobot restore FILE --data {FolderOf(path)}"
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"The newest good backup is of {good.MadeAt:yyyy-MM-dd HH:mm} UTC; bring it back with  "
                        + $"studiobot restore latest --data {FolderOf(path)}");
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            return $"Its backups can't be read: {no.Message}";
        }
    }
}
