using System.Runtime.Versioning;
using Dapper;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Ticks;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Members;
using StudioBot.Records.Tests;

namespace StudioBot.Host.Tests.Ticks;

/// <summary>Nora keeps house by two accounts and at the terminal, Otto by one, Zoe at the terminal only; Pia is a member.</summary>
public sealed class BackupRoundTests : IDisposable
{
    private const long Nora = 7;
    private const long Pia = 8;
    private const long Otto = 9;
    private const string Damage = "insert into money_sum (account, member_id, cents) values ('kitty', 0, 5)";
    private const string Mend = "delete from money_sum where account = 'kitty'";

    private static readonly DateTimeOffset Night = new(2026, 11, 25, 3, 40, 0, TimeSpan.Zero);

    private readonly TempFolder home = new();
    private readonly CapturedLog log = new();
    private readonly LoggerFactory loggers;
    private readonly StudioFile file;
    private readonly BackupFolder backups;
    private readonly BackupRound round;

    public BackupRoundTests()
    {
        loggers = new LoggerFactory([log]);
        file = StudioFile.Open(home.StudioPath);
        Studios.Found(file, Night.AddDays(-60), (Nora, "Nora"), (Pia, "Pia"));
        file.Write(session =>
        {
            session.Members.AddAccount(70, session.Members.ByAccount(Nora)!.Id, Night.AddDays(-50));
            session.Members.AddAccount(Otto, session.Members.Add("Otto", Role.Steward, Night.AddDays(-40)).Id, Night.AddDays(-40));
            session.Members.AddAccount(
                MemberRecords.Terminal, session.Members.Add("Zoe", Role.Steward, Night.AddDays(-40)).Id, Night.AddDays(-40));
        });
        backups = BackupFolder.Of(home.StudioPath);
        round = Round(null);
    }

    public void Dispose()
    {
        file.Dispose();
        loggers.Dispose();
        home.Dispose();
    }

    [Fact]
    public void A_night_s_backup_is_proven_and_nobody_hears_of_it()
    {
        round.Make(Night);
        var made = Assert.Single(backups.All());
        Assert.Equal(("studio-20261125T034000Z-daily.db", BackupKind.Daily, Night), (made.Name, made.Kind, made.MadeAt));
        Assert.Empty(Proof.Of(backups.FileOf(made)));
        Assert.Contains($"Backup {made.Name} is proven.", log.Text, StringComparison.Ordinal);
        Assert.Empty(Told());
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(23.9, 0)]
    [InlineData(24, 1)]      // the night's round was due at that moment
    [InlineData(400 * 24, 1)]
    public void A_start_makes_the_one_that_was_missed_and_only_that(double hoursAfter, int made)
    {
        round.Make(Night);
        var start = Night.AddHours(hoursAfter);
        round.CatchUp(start);
        round.CatchUp(start.AddMinutes(1));
        round.CatchUp(start.AddMinutes(2));
        Assert.Equal(Enumerable.Repeat(start, made), backups.All().Select(one => one.MadeAt).Where(at => at > Night));
    }

    [Fact]
    public void The_first_start_makes_one_and_a_hundred_more_make_none()
    {
        for (var start = 0; start < 100; start++)
        {
            round.CatchUp(Night.AddMinutes(start));
        }

        Assert.Equal(Night, Assert.Single(backups.All()).MadeAt);
    }

    [Fact]
    public void One_that_was_asked_for_does_not_stand_for_the_night_s()
    {
        backups.Make(BackupKind.Asked, Night.AddHours(-5));
        round.CatchUp(Night);
        Assert.Equal([BackupKind.Daily, BackupKind.Asked], backups.All().Select(one => one.Kind));
    }

    // A calendar of November 2026: the 30th is a Monday, so weeks end on the 22nd and the 15th.
    [Fact]
    public void After_a_month_of_nights_seven_days_and_four_weeks_are_left_on_the_disk()
    {
        for (var night = 1; night <= 30; night++)
        {
            round.Make(new DateTimeOffset(2026, 11, night, 3, 40, 0, TimeSpan.Zero));
        }

        string[] left = ["15", "22", "24", "25", "26", "27", "28", "29", "30"];
        Assert.Equal(
            left.SelectMany(day => new[] { $"studio-202611{day}T034000Z-daily.db", $"studio-202611{day}T034000Z-daily.json" })
                .Append("studio.lock"),
            Directory.GetFiles(backups.Folder).Select(Path.GetFileName).Order());
        Assert.All(backups.All(), one => Assert.Empty(Proof.Of(backups.FileOf(one))));
    }

    [Fact]
    public void Damage_is_told_to_each_steward_once_with_the_way_back()
    {
        round.Make(Night);
        Do(Damage);

        round.Make(Night.AddDays(1));
        var told = Told();
        Assert.Equal([Nora, Otto], told.Select(one => one.Chat).Order());
        Assert.All(told, one => Assert.Equal(
            $"""
            The studio's file is damaged
            1 balances are not the sum of their lines. Stop the service and bring the newest good backup back:
            studiobot restore latest --data {home.Path}
            The newest good one is of 2026-11-25 03:40 UTC.
            """,
            one.Letter.Plain));
        Assert.All(told, one => Assert.True(one.Letter.ByItself));
        Assert.Single(backups.All());

        round.Make(Night.AddDays(2));
        round.CatchUp(Night.AddDays(3));
        Assert.Empty(Told());
        Assert.Contains("The studio's file is damaged.", log.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Damage_that_comes_again_after_it_was_put_right_is_told_again()
    {
        round.Make(Night);
        Do(Damage);
        round.Make(Night.AddDays(1));
        Told();
        Do(Mend);
        round.Make(Night.AddDays(2));
        Assert.Empty(Told());

        Do(Damage);
        round.Make(Night.AddDays(3));
        var told = Told();
        Assert.Equal(2, told.Count);
        Assert.All(told, one => Assert.EndsWith("The newest good one is of 2026-11-27 03:40 UTC.", one.Letter.Plain, StringComparison.Ordinal));
    }

    [Fact]
    public void One_that_could_not_be_made_is_told_once_with_its_cause()
    {
        home.Write("backups", "a file where the folder should be");
        round.Make(Night);
        var told = Told();
        Assert.Equal([Nora, Otto], told.Select(one => one.Chat).Order());
        Assert.All(told, one =>
        {
            var lines = one.Letter.Plain.Split('\n');
            Assert.Equal("The day's backup could not be made", lines[0]);
            Assert.Contains(backups.Folder, lines[1], StringComparison.Ordinal);
            Assert.Equal([$"studiobot backup --data {home.Path}", "There is no good backup."], lines[2..]);
        });
        round.Make(Night.AddDays(1));
        Assert.Empty(Told());
    }

    [Fact]
    public void Backups_that_can_t_be_read_keep_no_trouble_from_being_told()
    {
        round.Make(Night);
        using var held = new FileStream(backups.FileOf(backups.All()[0]), FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        Do(Damage);
        round.Make(Night.AddDays(1));
        var told = Told();
        Assert.Equal(2, told.Count);
        Assert.All(told, one => Assert.Contains("The backups can't be read: ", one.Letter.Plain, StringComparison.Ordinal));
    }

    [Fact]
    public void While_another_one_is_made_nobody_is_alarmed()
    {
        Directory.CreateDirectory(backups.Folder);
        using (FileClaim.On(Path.Combine(backups.Folder, "studio")))
        {
            round.Make(Night);
        }

        Assert.Empty(Told());
        Assert.Contains("No backup was made by this round", log.Text, StringComparison.Ordinal);
        round.CatchUp(Night.AddMinutes(1));
        Assert.Single(backups.All());
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void The_house_s_own_program_takes_each_night_s_backup_to_another_place()
    {
        var elsewhere = Directory.CreateDirectory(Path.Combine(home.Path, "else where")).FullName;
        Round(Program($"cp \"$1\" \"$2\" '{elsewhere}'")).Make(Night);
        Assert.Equal(
            ["studio-20261125T034000Z-daily.db", "studio-20261125T034000Z-daily.json"],
            Directory.GetFiles(elsewhere).Select(Path.GetFileName).Order());
        Assert.Empty(Proof.Of(Path.Combine(elsewhere, "studio-20261125T034000Z-daily.db")));
        Assert.Empty(Told());
    }

    [Theory]
    [UnsupportedOSPlatform("windows")]
    [InlineData(60, "echo no room there >&2; exit 3", "ended with 3: no room there")]
    [InlineData(60, "exit 1", "ended with 1, and said nothing.")]
    [InlineData(2, "exec sleep 600", "took over 00:00:02 and was ended.")]
    public void A_backup_that_was_not_copied_is_logged_and_told_once_until_it_works_again(int seconds, string script, string why)
    {
        var program = Program(script);
        var copying = Round(program, seconds);
        copying.Make(Night);
        var told = Told();
        Assert.Equal([Nora, Otto], told.Select(one => one.Chat).Order());
        var backup = Path.Combine(backups.Folder, "studio-20261125T034000Z-daily");
        Assert.All(told, one => Assert.Equal(
            $"""
            The day's backup was not copied
            {program} {why}
            {program} {backup}.db {backup}.json
            The backup itself is good. This is not told every night anew.
            """,
            one.Letter.Plain));
        Assert.Contains($"was not copied: {program} {why}", log.Text, StringComparison.Ordinal);

        copying.Make(Night.AddDays(1));
        Assert.Empty(Told());
        Program("exit 0");
        copying.Make(Night.AddDays(2));
        Assert.Empty(Told());
        Program(script);
        copying.Make(Night.AddDays(3));
        Assert.Equal(2, Told().Count);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void A_program_that_can_t_be_started_is_told()
    {
        var program = home.Write("copy", "no program");
        Round(program).Make(Night);
        Assert.Equal(2, Told().Count(one => one.Letter.Plain.Contains($"{program} can't be started: ", StringComparison.Ordinal)));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void The_house_s_own_program_hears_nothing_of_the_token()
    {
        Environment.SetEnvironmentVariable("Telegram__Canary", "TestOnly");
        Round(Program($"env > '{home.Path}/heard'")).Make(Night);
        Environment.SetEnvironmentVariable("Telegram__Canary", null);
        var heard = File.ReadAllText(Path.Combine(home.Path, "heard"));
        Assert.Contains("PATH=", heard, StringComparison.Ordinal);
        Assert.DoesNotContain("TestOnly", heard, StringComparison.Ordinal);
    }

    private BackupRound Round(string? program, int seconds = 60) =>
        new(file, backups, new BackupCopy(program, TimeSpan.FromSeconds(seconds)), loggers.CreateLogger<BackupRound>());

    [UnsupportedOSPlatform("windows")]
    private string Program(string script)
    {
        var path = home.Write("copy", "#!/bin/sh\n" + script + "\n");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        return path;
    }

    // As a fault of the disk would, past all that the program watches over.
    private void Do(string sql)
    {
        using var raw = Dump.Raw(home.StudioPath);
        raw.Execute("pragma foreign_keys = off; " + sql);
    }

    private List<(long Chat, Letter Letter)> Told()
    {
        List<(long, Letter)> told = [];
        while (file.Write(session => session.Post.Claim(Night.AddYears(1))) is { } post)
        {
            told.Add((post.ChatId, LetterText.Read(post.Payload)));
            file.Write(session => session.Post.Sent(post.Id, Night, post.Id));
        }

        return told;
    }
}
