using Dapper;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Members;
using StudioBot.Records.Tests;

namespace StudioBot.Host.Tests.Sending;

/// <summary>What goes out where a steward said <c>backup</c>.</summary>
public sealed class BackupLetterTests : IDisposable
{
    private const string Name = "studio-20261125T090000Z-asked.db";

    private static readonly DateTimeOffset Asked = new(2026, 11, 25, 9, 0, 0, 250, TimeSpan.Zero);

    private readonly TempFolder home = new();
    private readonly CapturedLog log = new();
    private readonly LoggerFactory loggers;
    private readonly StudioFile file;
    private readonly BackupFolder backups;
    private readonly BackupLetter letter;

    public BackupLetterTests()
    {
        loggers = new LoggerFactory([log]);
        file = StudioFile.Open(home.StudioPath);
        Studios.Found(file, Asked.AddDays(-60), (7, "Nora"));
        backups = BackupFolder.Of(home.StudioPath);
        letter = new BackupLetter(backups, loggers.CreateLogger<BackupLetter>());
    }

    private string Made => Path.Combine(backups.Folder, Name);

    public void Dispose()
    {
        file.Dispose();
        loggers.Dispose();
        home.Dispose();
    }

    [Fact]
    public void It_brings_a_proven_backup_byte_for_byte_and_says_how_to_bring_it_back()
    {
        var sent = Filled(Asked);
        Assert.Equal((Name, "application/vnd.sqlite3"), (sent.File!.Name, sent.File.MediaType));
        Assert.Equal(File.ReadAllBytes(Made), sent.File.Content);
        Assert.Empty(Proof.Of(Made));
        Assert.Equal(Dump.Of(home.StudioPath), Dump.Of(Made));
        Assert.Matches(
            @"^\d+ kB, \d+ tables, [\d,]+ rows; proven\. To bring it back, on the studio's machine: studiobot restore "
                + Name.Replace(".", @"\.") + "$",
            sent.Plain);
        Assert.True(sent.Plain.Length <= ReplyMarkup.LongestCaption);
    }

    [Fact]
    public void Sent_again_it_is_the_same_file_and_no_other_was_made_for_it()
    {
        var first = Filled(Asked).File!;
        file.Write(session => session.Members.Add("Later", Role.Member, Asked));
        var again = Filled(Asked).File!;
        Assert.Equal(first.Name, again.Name);
        Assert.Equal(first.Content, again.Content);
        Assert.Equal(Name, Assert.Single(backups.All()).Name);
    }

    [Fact]
    public void Asked_for_again_it_is_a_new_one()
    {
        Filled(Asked);
        file.Write(session => session.Members.Add("Later", Role.Member, Asked));
        var second = Filled(Asked.AddDays(1));
        Assert.Equal("studio-20261126T090000Z-asked.db", second.File!.Name);
        Assert.Contains("Later", StudioFile.Glance(
            Path.Combine(backups.Folder, second.File.Name), view => view.Members.All().Select(one => one.Name).ToList()));
    }

    [Fact]
    public void What_was_damaged_on_the_disk_meanwhile_is_not_sent()
    {
        Filled(Asked);
        File.AppendAllText(Made, "x");
        var sent = Filled(Asked).File!;
        Assert.Empty(Proof.Of(Path.Combine(backups.Folder, sent.Name)));
        Assert.Equal(File.ReadAllBytes(Path.Combine(backups.Folder, sent.Name)), sent.Content);
    }

    // The service takes files of up to 50 MB from a bot, by its own documentation.
    [Fact]
    public void What_is_more_than_goes_out_in_one_file_is_told_with_its_place()
    {
        using (var raw = Dump.Raw(home.StudioPath))
        {
            raw.Execute(
                """
                insert into post (chat_id, urgency, payload, put_at, next_try_at) values (7, 0, '{}', 0, 0);
                insert into post_file (post_id, name, media_type, content)
                values (last_insert_rowid(), 'large', 'text/csv', randomblob(50000000));
                """);
        }

        var sent = Filled(Asked);
        Assert.Null(sent.File);
        Assert.True(new FileInfo(Made).Length > 50_000_000);
        Assert.Empty(Proof.Of(Made));
        Assert.Matches(
            @"^The backup is proven, but 50\.\d MB, \d+ tables, [\d,]+ rows are more than goes out in one file\. It is on the studio's machine: ",
            sent.Plain);
        Assert.EndsWith(Made, sent.Plain, StringComparison.Ordinal);
    }

    [Fact]
    public void One_that_can_t_be_made_says_so_with_its_cause_in_place_of_a_file()
    {
        home.Write("backups", "a file where the folder should be");
        var sent = Filled(Asked);
        Assert.Null(sent.File);
        Assert.StartsWith("The backup could not be made: ", sent.Plain, StringComparison.Ordinal);
        Assert.Contains(backups.Folder, sent.Plain, StringComparison.Ordinal);
        Assert.EndsWith("On the studio's machine: studiobot backup", sent.Plain, StringComparison.Ordinal);
        Assert.Contains("IOException", log.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_damaged_studio_is_told_as_that_and_not_sent()
    {
        using (var raw = Dump.Raw(home.StudioPath))
        {
            raw.Execute("insert into money_sum (account, member_id, cents) values ('kitty', 0, 5)");
        }

        var sent = Filled(Asked);
        Assert.Null(sent.File);
        Assert.StartsWith("The backup could not be made: 1 balances are not the sum of their lines.", sent.Plain, StringComparison.Ordinal);
        Assert.Contains("UnprovenBackupException", log.Text, StringComparison.Ordinal);
        Assert.Empty(backups.All());
    }

    [Fact]
    public void While_another_one_is_made_there_is_no_letter_yet()
    {
        Directory.CreateDirectory(backups.Folder);
        using var other = FileClaim.On(Path.Combine(backups.Folder, "studio"));
        Assert.Throws<BackupUnderWayException>(() => Filled(Asked));
    }

    private Letter Filled(DateTimeOffset askedAt) => letter.Filled(BackupLetter.Wished, askedAt);
}
