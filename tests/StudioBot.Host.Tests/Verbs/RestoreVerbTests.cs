using System.Globalization;
using Dapper;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;
using StudioBot.Records.Schema;
using StudioBot.Records.Tests;

namespace StudioBot.Host.Tests.Verbs;

/// <summary>Every line a person hears from it, how it ends, and what is in the data folder then.</summary>
public sealed class RestoreVerbTests : IDisposable
{
    private const string Name = "studio-20261126T042000Z-asked.db";

    private readonly TempFolder home = new();
    private readonly Typist typist = new();

    public RestoreVerbTests()
    {
        using var file = StudioFile.Open(home.StudioPath);
        file.Write(SampleStudio.WriteInto);
    }

    private string Made => Path.Combine(home.Path, "backups", Name);

    private string Kept => home.StudioPath + ".before-restore-20261126T052000Z";

    public void Dispose() => home.Dispose();

    [Theory]
    [InlineData("latest")]
    [InlineData(Name)]
    public async Task The_studio_is_as_it_was_and_opens_and_what_was_there_is_kept_aside(string named)
    {
        await BackUpAndGoOn();
        var before = Dump.Of(home.StudioPath);

        var ended = await Restore(named);

        Says(0, $"{home.StudioPath} is {Made} again, and opens.\nWhat was there is kept as {Kept}.", ended);
        Assert.Equal(Dump.Of(Made), Dump.Of(home.StudioPath));
        Assert.Equal(before, Dump.Of(Kept));
        Assert.Equal(0, (await typist.Type("--data", home.Path)).Code);
        Assert.DoesNotContain("Later", Names(home.StudioPath));
    }

    [Fact]
    public async Task The_newest_good_one_is_taken_and_no_damaged_one()
    {
        await BackUpAndGoOn();
        typist.Clock.Advance(TimeSpan.FromDays(1));
        await Type("backup");
        var newer = Path.Combine(home.Path, "backups", "studio-20261127T052000Z-asked.db");
        File.AppendAllText(newer, "x");

        Assert.StartsWith($"{home.StudioPath} is {Made} again", (await Restore("latest")).Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Later", Names(home.StudioPath));
    }

    [Fact]
    public async Task A_copy_that_came_without_its_manifest_is_checked_all_the_same_and_that_is_said()
    {
        await BackUpAndGoOn();
        var copy = Path.Combine(home.Path, "from-the-stick.db");
        File.Copy(Made, copy);
        Says(
            0,
            $"""
            {home.StudioPath} is {copy} again, and opens.
            No manifest stood beside it: it stood every check but that of its SHA-256.
            What was there is kept as {Kept}.
            """,
            await Restore(copy));
        Assert.Equal(Dump.Of(Made), Dump.Of(home.StudioPath));
    }

    [Fact]
    public async Task On_another_machine_it_makes_the_folder_of_the_studio()
    {
        await BackUpAndGoOn();
        var elsewhere = Path.Combine(home.Path, "other");
        Says(
            0,
            $"{Path.Combine(elsewhere, "studio.db")} is {Made} again, and opens.",
            await typist.Type("restore", Made, "--data", elsewhere));
        Assert.Equal(Dump.Of(Made), Dump.Of(Path.Combine(elsewhere, "studio.db")));
    }

    [Fact]
    public async Task It_does_not_fill_in_a_disk_that_is_not_mounted()
    {
        await BackUpAndGoOn();
        var disk = Path.Combine(home.Path, "disk");
        Says(
            73,
            $"There is no folder {disk}. Mount its disk, or make it:  mkdir -p {disk}",
            await typist.Type("restore", Made, "--data", Path.Combine(disk, "studio")));
        Assert.False(Directory.Exists(disk));
    }

    [Fact]
    public async Task A_studio_that_is_in_use_is_left_alone()
    {
        await BackUpAndGoOn();
        using (StudioFile.Open(home.StudioPath))
        {
            Says(75, $"Another studiobot has {home.StudioPath} open. Stop it first, or name another --data.", await Restore("latest"));
        }

        NothingChanged();
    }

    [Fact]
    public async Task A_newer_one_is_refused_with_both_versions()
    {
        await BackUpAndGoOn();
        using (var raw = Dump.Raw(Made))
        {
            raw.Execute($"pragma user_version = {SchemaSteps.Newest + 3}");
        }

        Says(
            65,
            $"{Made}: The studio's file has version {SchemaSteps.Newest + 3}, this program knows versions up to {SchemaSteps.Newest}. "
                + "Restore it with the newer program. Nothing was changed.",
            await Restore(Name));
        NothingChanged();
    }

    [Fact]
    public async Task One_whose_bytes_are_not_those_of_its_manifest_is_refused()
    {
        await BackUpAndGoOn();
        Spoil("update member set role = 'steward'");
        Says(65, $"{Made} is not restored: Its SHA-256 is not that of its manifest. Nothing was changed.", await Restore(Name));
        NothingChanged();
    }

    [Theory]
    [InlineData("create trigger spy after insert on act begin delete from lot_sum; end", "The schema is not that of version {0}.")]
    [InlineData("update lot_sum set units = units + 1 where lot_id < 3", "2 lots are not the sum of their lines.")]
    public async Task One_that_was_tampered_with_is_refused_without_its_manifest_too(string done, string why)
    {
        await BackUpAndGoOn();
        Spoil(done);
        File.Delete(Path.ChangeExtension(Made, ".json"));
        why = string.Format(CultureInfo.InvariantCulture, why, SchemaSteps.Newest);
        Says(65, $"{Made} is not restored: {why} Nothing was changed.", await Restore(Made));
        NothingChanged();
    }

    [Fact]
    public async Task What_is_no_studio_is_refused()
    {
        await BackUpAndGoOn();
        var other = home.Write("holiday.txt", new string('x', 5000));
        Says(65, $"{other} is not restored: It is no studio. Nothing was changed.", await Restore(other));
        Says(65, $"{home.StudioPath} is not restored: It is the studio itself. Nothing was changed.", await Restore(home.StudioPath));
        NothingChanged();
    }

    [Fact]
    public async Task One_that_can_t_be_read_is_at_fault_itself()
    {
        await BackUpAndGoOn();
        var copy = Path.Combine(home.Path, "copy.db");
        File.Copy(Made, copy);
        using (new FileStream(copy, FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            var ended = await Restore(copy);
            Assert.Equal((65, ""), (ended.Code, ended.Out));
            Assert.StartsWith($"{copy} is not restored: It can't be read: ", ended.Error, StringComparison.Ordinal);
        }

        NothingChanged();
    }

    [Fact]
    public async Task What_is_not_there_is_told_with_where_it_was_looked_for()
    {
        var backups = Path.Combine(home.Path, "backups");
        Says(
            64,
            $"There is no good backup in {backups}. Name a file:  studiobot restore FILE --data {home.Path}",
            await Restore("latest"));
        Says(
            64,
            $"There is no file none.db, here or in {backups}. See  studiobot backup list --data {home.Path}",
            await Restore("none.db"));
    }

    // The moment of the backup, an hour, and one member who is not in it.
    private async Task BackUpAndGoOn()
    {
        Assert.Equal(0, (await Type("backup")).Code);
        typist.Clock.Advance(TimeSpan.FromHours(1));
        using var file = StudioFile.Open(home.StudioPath);
        file.Write(session => session.Members.Add("Later", Role.Member, typist.Clock.GetUtcNow()));
    }

    private void Spoil(string done)
    {
        using var raw = Dump.Raw(Made);
        raw.Execute(done);
    }

    private void NothingChanged()
    {
        Assert.Empty(Directory.GetFiles(home.Path, "*.before-restore-*"));
        Assert.Empty(Directory.GetFiles(home.Path, "*.restoring*"));
        Assert.Contains("Later", Names(home.StudioPath));
    }

    private Task<Ended> Restore(string named) => Type("restore", named);

    private Task<Ended> Type(params string[] words) => typist.Type([.. words, "--data", home.Path]);

    private static List<string> Names(string path)
    {
        using var file = StudioFile.Open(path);
        return file.Read(view => view.Members.All().Select(one => one.Name).ToList());
    }

    private static void Says(int code, string words, Ended ended) => Assert.Equal(
        (code, code == 0 ? words + "\n" : "", code == 0 ? "" : words + "\n"), (ended.Code, ended.Out, ended.Error));
}
