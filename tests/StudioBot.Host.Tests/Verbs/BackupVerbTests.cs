using System.Globalization;
using Dapper;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;
using StudioBot.Records.Schema;
using StudioBot.Records.Tests;

namespace StudioBot.Host.Tests.Verbs;

/// <summary>Every line a person hears from it, and how it ends.</summary>
public sealed class BackupVerbTests : IDisposable
{
    private const string Name = "studio-20261126T042000Z-asked.db";

    private readonly TempFolder home = new();
    private readonly Typist typist = new();

    private string Backups => Path.Combine(home.Path, "backups");

    private string Made => Path.Combine(Backups, Name);

    public void Dispose() => home.Dispose();

    [Fact]
    public async Task Where_there_is_no_studio_its_folder_is_asked_for_and_nothing_is_made()
    {
        Says(64, $"There is no studio {home.StudioPath}. Name its folder:  studiobot backup --data DIR", await Type("backup"));
        Assert.Empty(Directory.GetFileSystemEntries(home.Path));
    }

    [Fact]
    public async Task A_copy_is_made_and_told_with_what_it_holds()
    {
        Found();
        var ended = await Type("backup");
        var tables = Dump.RowsOf(home.StudioPath);
        tables.Remove("sqlite_sequence"); // the database's own
        var size = Math.Round(new FileInfo(Made).Length / 1000.0);
        Says(0, $"{Name}: {size} kB, {tables.Count} tables, {tables.Values.Sum(rows => rows.Count)} rows, proven. It is in {Backups}.", ended);
        Assert.Equal(Dump.Of(home.StudioPath), Dump.Of(Made));
    }

    [Fact]
    public async Task It_is_made_while_another_program_has_the_studio_and_is_writing()
    {
        Found();
        using var file = StudioFile.Open(home.StudioPath);
        file.Write(session => session.Members.Add("Before", Role.Member, typist.Clock.GetUtcNow()));
        using var begun = new ManualResetEventSlim();
        using var enough = new ManualResetEventSlim();
        var writing = Task.Run(() => file.Write(session =>
        {
            session.Members.Add("Meanwhile", Role.Member, typist.Clock.GetUtcNow());
            begun.Set();
            Assert.True(enough.Wait(TimeSpan.FromSeconds(30)));
        }));
        Assert.True(begun.Wait(TimeSpan.FromSeconds(30)));

        var ended = await Type("backup");
        enough.Set();
        await writing;

        Assert.Equal((0, ""), (ended.Code, ended.Error));
        var names = StudioFile.Glance(Made, view => view.Members.All().Select(one => one.Name).ToList());
        Assert.Contains("Before", names);
        Assert.DoesNotContain("Meanwhile", names);
    }

    [Fact]
    public async Task While_another_one_is_made_it_says_when_to_come_again()
    {
        Found();
        Directory.CreateDirectory(Backups);
        using var other = FileClaim.On(Path.Combine(Backups, "studio"));
        Says(75, "Another backup of this studio is being made at this moment. Try again in a minute.", await Type("backup"));
    }

    [Fact]
    public async Task A_damaged_studio_is_not_copied_and_the_way_back_is_told()
    {
        Found();
        await Type("backup");
        using (var raw = Dump.Raw(home.StudioPath))
        {
            raw.Execute("update lot_sum set units = units + 1 where lot_id = 1");
        }

        typist.Clock.Advance(TimeSpan.FromDays(1));
        Says(
            65,
            $"{home.StudioPath} is damaged: 1 lots are not the sum of their lines. The newest good backup is of 2026-11-26 04:20 UTC; "
                + $"bring it back with  studiobot restore latest --data {home.Path}",
            await Type("backup"));
        Assert.Single(Directory.GetFiles(Backups, "*.db*"));
    }

    [Fact]
    public async Task A_place_that_takes_no_backups_is_told_with_its_cause()
    {
        Found();
        home.Write("backups", "a file where the folder should be");
        var ended = await Type("backup");
        Assert.Equal((73, ""), (ended.Code, ended.Out));
        Assert.StartsWith($"Can't write {home.StudioPath}: ", ended.Error, StringComparison.Ordinal);
        Assert.Contains(Backups, ended.Error, StringComparison.Ordinal);
        Assert.EndsWith(" Put that right, or name another folder with --data.\n", ended.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("backup")]
    [InlineData("backup list")]
    [InlineData("backup verify")]
    [InlineData("restore latest")]
    public async Task Settings_that_leave_open_where_the_studio_is_end_it(string line)
    {
        home.Write("config/studiobot.json", "{ \"Studio\": ");
        var ended = await new Typist { ProgramFolder = home.Path }.Type([.. line.Split(' '), "--data", home.Path]);
        Assert.Equal((78, ""), (ended.Code, ended.Out));
        Assert.StartsWith("config/studiobot.json = (the file): ", ended.Error, StringComparison.Ordinal);
        Assert.EndsWith("Example: { \"Studio\": { \"Data\": \"/srv/studio\" } }\n", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_setting_that_is_wrong_does_not_keep_it_from_being_made()
    {
        Found();
        typist.Variables["Telegram__Token"] = "no token";
        Assert.Equal(0, (await Type("backup")).Code);
    }

    [Fact]
    public async Task None_are_listed_as_none() =>
        Says(0, $"There are no backups in {Backups}.", await Type("backup", "list"));

    [Fact]
    public async Task They_are_listed_with_the_newest_first()
    {
        Found();
        await Type("backup");
        typist.Clock.Advance(TimeSpan.FromHours(25));
        await Type("backup");
        var size = string.Create(CultureInfo.InvariantCulture, $"{Math.Round(new FileInfo(Made).Length / 1000.0)} kB");
        var version = $"{SchemaSteps.Newest,7}";
        Says(
            0,
            $"""
            made, UTC         kind     version      size  name in {Backups}
            2026-11-27 05:20  Asked    {version}  {size,8}  studio-20261127T052000Z-asked.db
            2026-11-26 04:20  Asked    {version}  {size,8}  {Name}
            """,
            await Type("backup", "list"));
    }

    [Fact]
    public async Task The_newest_is_proven_anew_and_so_is_one_by_its_name_or_its_path()
    {
        Found();
        await Type("backup");
        var elsewhere = Path.Combine(home.Path, "stick", Name);
        Directory.CreateDirectory(Path.GetDirectoryName(elsewhere)!);
        File.Copy(Made, elsewhere);
        File.Copy(Path.ChangeExtension(Made, ".json"), Path.ChangeExtension(elsewhere, ".json"));

        const string Good = "is good: its SHA-256, its structure, its references, its sums.";
        Says(0, $"{Made} {Good}", await Type("backup", "verify"));
        Says(0, $"{Made} {Good}", await Type("backup", "verify", Name));
        Says(0, $"{elsewhere} {Good}", await Type("backup", "verify", elsewhere));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(99)]
    [InlineData(4096)]
    [InlineData(200_000)]
    public async Task One_flipped_bit_is_found(int at)
    {
        Found();
        await Type("backup");
        var bytes = File.ReadAllBytes(Made);
        bytes[at] ^= 1;
        File.WriteAllBytes(Made, bytes);
        Says(1, $"{Made}: Its SHA-256 is not that of its manifest.", await Type("backup", "verify"));
    }

    [Fact]
    public async Task One_without_its_manifest_is_not_called_good()
    {
        Found();
        await Type("backup");
        File.Delete(Path.ChangeExtension(Made, ".json"));
        Says(1, $"{Made}: No manifest of it stands beside it.", await Type("backup", "verify", Name));
    }

    [Fact]
    public async Task Something_else_is_told_with_all_that_is_wrong()
    {
        var other = home.Write("holiday.txt", new string('x', 5000));
        Says(
            1,
            $"{other}: No manifest of it stands beside it.\n{other}: SQLite Error 26: 'file is not a database'.",
            await Type("backup", "verify", other));
    }

    [Fact]
    public async Task One_that_can_t_be_read_is_at_fault_itself()
    {
        Found();
        await Type("backup");
        using var held = new FileStream(Made, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        var ended = await Type("backup", "verify");
        Assert.Equal((1, ""), (ended.Code, ended.Out));
        Assert.StartsWith($"{Made}: It can't be read: ", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_there_is_nothing_to_prove_the_next_step_is_told()
    {
        Says(64, $"There are no backups in {Backups}. Make one:  studiobot backup --data {home.Path}", await Type("backup", "verify"));
        Says(
            64,
            $"There is no file none.db, here or in {Backups}. See  studiobot backup list --data {home.Path}",
            await Type("backup", "verify", "none.db"));
    }

    [Theory]
    [InlineData("backup dance", "dance")]
    [InlineData("backup list dance", "dance")]
    public async Task A_word_it_does_not_know_is_named_with_those_it_does(string line, string word)
    {
        Found();
        Says(
            64,
            $"“{word}” is nothing backup does here.\nTry  studiobot backup [list | verify [FILE]] [--data DIR]",
            await Type(line.Split(' ')));
        Assert.False(Directory.Exists(Backups));
    }

    private Task<Ended> Type(params string[] words) => typist.Type([.. words, "--data", home.Path]);

    private void Found()
    {
        using var file = StudioFile.Open(home.StudioPath);
        file.Write(SampleStudio.WriteInto);
    }

    private static void Says(int code, string words, Ended ended) => Assert.Equal(
        (code, code == 0 ? words + "\n" : "", code == 0 ? "" : words + "\n"), (ended.Code, ended.Out, ended.Error));
}
