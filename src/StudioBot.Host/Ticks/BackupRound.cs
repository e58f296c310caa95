using System.Globalization;
using Microsoft.Extensions.Logging;
using StudioBot.Chat.Replies;
using StudioBot.Host.Logging;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Members;
using StudioBot.Records.Post;

namespace StudioBot.Host.Ticks;

/// <summary>The day's backup, and its copy in another place. Its proof looks at every page, reference and sum, so what
/// is damaged in the studio's file is found with it, and told to the stewards once.</summary>
internal sealed class BackupRound(StudioFile file, BackupFolder backups, BackupCopy copy, ILogger<BackupRound> log)
{
    private static readonly TimeSpan Day = TimeSpan.FromDays(1);

    // The first of those in a row that were not copied: what is not put right is told once.
    private string? uncopied;

    /// <summary>Makes the one that was missed while the service was down; none where the last is of this day.</summary>
    public void CatchUp(DateTimeOffset now)
    {
        var last = backups.All().Where(one => one.Kind == BackupKind.Daily).Select(one => one.MadeAt).FirstOrDefault();
        if (now - last >= Day)
        {
            Make(now);
        }
    }

    /// <summary>Makes the day's backup and proves it.</summary>
    public void Make(DateTimeOffset now)
    {
        try
        {
            var made = backups.Make(BackupKind.Daily, now);
            log.LogInformation(Events.BackupProven, "Backup {Name} is proven.", made.Name);
            Copy(made, now);
        }
        catch (BackupUnderWayException busy)
        {
            log.LogWarning(Events.BackupUnderWay, "No backup was made by this round: {Why}", busy.Message);
        }
        catch (UnprovenBackupException broken) when (broken.IsStudioDamaged)
        {
            Damaged(broken, now);
        }
        catch (UnreadableStudioException broken) when (broken.IsDamaged)
        {
            Damaged(broken, now);
        }
        catch (Exception no) when (no is UnprovenBackupException or UnreadableStudioException
            or IOException or UnauthorizedAccessException)
        {
            log.LogError(Events.BackupNotMade, no, "The day's backup could not be made.");
            TellWay("missed", "The day's backup could not be made", no.Message, "studiobot backup", now);
        }
    }

    private void Copy(Backup made, DateTimeOffset now)
    {
        var (path, manifest) = (backups.FileOf(made), backups.ManifestOf(made));
        if (copy.Run(path, manifest) is not { } why)
        {
            uncopied = null;
            return;
        }

        log.LogError(Events.BackupNotCopied, "Backup {Name} was not copied: {Why}", made.Name, why);
        uncopied ??= made.Name;
        Tell(
            $"uncopied {uncopied}",
            now,
            new Block.Headline("The day's backup was not copied"),
            new Block.Line(why),
            new Block.Sample(copy.Line(path, manifest)),
            new Block.Line("The backup itself is good. This is not told every night anew."));
    }

    private void Damaged(Exception broken, DateTimeOffset now)
    {
        log.LogError(Events.StudioDamaged, broken, "The studio's file is damaged.");
        TellWay(
            "damaged",
            "The studio's file is damaged",
            $"{broken.Message} Stop the service and bring the newest good backup back:",
            "studiobot restore latest",
            now);
    }

    private (Backup? Good, string InWords) Newest()
    {
        try
        {
            return backups.NewestGood() is not { } good ? (null, "There is no good backup.")
                : (good, string.Create(
                    CultureInfo.InvariantCulture, $"The newest good one is of {good.MadeAt:yyyy-MM-dd HH:mm} UTC."));
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            return (null, $"The backups can't be read: {no.Message}");
        }
    }

    // Once for each backup after which it went wrong: what is not put right is not told every night.
    private void TellWay(string what, string headline, string why, string command, DateTimeOffset now)
    {
        var (good, newest) = Newest();
        var there = $"{command} --data {Path.GetDirectoryName(backups.Folder)}";
        Tell(
            $"{what} {good?.Name}",
            now,
            new Block.Headline(headline),
            new Block.Line(why),
            new Block.Sample(there),
            new Block.Line(newest));
    }

    private void Tell(string key, DateTimeOffset now, params Block[] blocks) => file.Write(session =>
    {
        foreach (var steward in session.Members.All().Where(member => member.Role == Role.Steward))
        {
            foreach (var account in session.Members.Accounts(steward.Id)
                .Where(account => account != MemberRecords.Terminal)
                .Take(1))
            {
                Posting.PutByItself(
                    session, account, account, new Reply(blocks), Urgency.Ping, now, $"backup {key} {account}");
            }
        }
    });
}
