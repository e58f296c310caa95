using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;
using StudioBot.Host.Telegram;
using StudioBot.Host.Verbs;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Post;

namespace StudioBot.Host.Sending;

/// <summary>The backup that a steward asked for: made when it is sent and read from the disk then, so that no studio
/// ever carries a copy of itself.</summary>
internal sealed class BackupLetter(BackupFolder backups, ILogger<BackupLetter> log)
{
    /// <summary>The largest file the chat service takes from a bot.</summary>
    public const long MostBytes = 50_000_000;

    private const string MediaType = "application/vnd.sqlite3";

    /// <summary>The letter as it is put, before there is a file.</summary>
    public static Letter Wished { get; } = Saying("The backup.") with { BringsBackup = true };

    /// <summary>The letter with its file, or with the reason why it has none.</summary>
    /// <param name="letter">As it was put.</param>
    /// <param name="askedAt">When: however often it is sent, one backup is made for it.</param>
    /// <exception cref="BackupUnderWayException">Another one is being made: to be tried again soon.</exception>
    public Letter Filled(Letter letter, DateTimeOffset askedAt)
    {
        try
        {
            var made = MadeFor(askedAt) ?? backups.Make(BackupKind.Asked, askedAt);
            return made.Bytes > MostBytes
                ? Saying($"The backup is proven, but {BackupVerb.InWords(made)} are more than goes out in one file. "
                    + $"It is on the studio's machine: {backups.FileOf(made)}")
                : Saying($"{BackupVerb.InWords(made)}; proven. To bring it back, on the studio's machine: "
                    + $"studiobot restore {made.Name}") with
                {
                    File = new PostFile(made.Name, MediaType, File.ReadAllBytes(backups.FileOf(made))),
                };
        }
        catch (Exception no) when (no is UnprovenBackupException or UnreadableStudioException
            or IOException or UnauthorizedAccessException)
        {
            log.LogError(Events.AskedBackupNotMade, no, "The backup that was asked for could not be made.");
            return Saying($"The backup could not be made: {no.Message} On the studio's machine: studiobot backup");
        }
    }

    private Backup? MadeFor(DateTimeOffset askedAt) => backups.All().FirstOrDefault(one =>
        one.Kind == BackupKind.Asked
        && one.MadeAt.ToUnixTimeSeconds() == askedAt.ToUnixTimeSeconds()
        && Proof.Sum(backups.FileOf(one)) == one.Sha256);

    private static Letter Saying(string words)
    {
        var (html, plain) = ReplyMarkup.Parts(new Chat.Replies.Reply(new Chat.Replies.Block.Line(words)))[0];
        return new Letter(html, plain, []);
    }
}
