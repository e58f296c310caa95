using Dapper;
using StudioBot.Records.Backups;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;
using StudioBot.Records.Schema;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Backups;

public sealed class BackupFolderTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly BackupFolder backups;

    public BackupFolderTests()
    {
        backups = BackupFolder.Of(studio.Path);
        studio.File.Write(SampleStudio.WriteInto);
    }

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_backup_holds_the_same_rows_and_its_manifest_tells_of_them()
    {
        var made = backups.Make(BackupKind.Daily, Morning);

        Assert.Equal("studio-20261125T090000Z-daily.db", made.Name);
        Assert.Equal((Morning, SchemaSteps.Newest, BackupKind.Daily), (made.MadeAt, made.Version, made.Kind));
        Assert.Equal(Dump.Of(studio.Path), Dump.Of(backups.FileOf(made)));
        var told = Assert.Single(backups.All());
        Assert.Equal(made with { Rows = told.Rows }, told);
        Assert.Equal(Dump.RowsOf(studio.Path).Where(table => table.Key != "sqlite_sequence")
            .ToDictionary(table => table.Key, table => (long)table.Value.Count), told.Rows);
        Assert.Equal(told.Bytes, new FileInfo(backups.FileOf(made)).Length);
        Assert.Empty(Proof.Of(backups.FileOf(made)));
    }

    [Fact]
    public void What_is_committed_is_in_it_and_what_is_being_written_beside_it_is_not()
    {
        Backup? made = null;
        studio.File.Write(session => session.Members.Add("Before", Role.Member, Morning));
        studio.File.Write(session =>
        {
            session.Members.Add("Meanwhile", Role.Member, Morning);
            made = OnAnotherThread(() => backups.Make(BackupKind.Asked, Morning));
        });

        var names = StudioFile.Glance(backups.FileOf(made!), view => view.Members.All().Select(one => one.Name).ToList());
        Assert.Contains("Before", names);
        Assert.DoesNotContain("Meanwhile", names);
    }

    [Fact]
    public void It_needs_no_file_beside_it_and_leaves_none()
    {
        var made = backups.Make(BackupKind.Daily, Morning);

        Assert.Empty(Proof.Of(backups.FileOf(made)));
        Assert.Equal(
            [made.Name, Path.ChangeExtension(made.Name, ".json"), "studio.lock"],
            Directory.GetFiles(backups.Folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void Two_of_one_second_have_two_names()
    {
        var names = new[] { backups.Make(BackupKind.Asked, Morning).Name, backups.Make(BackupKind.Upgrade, Morning).Name,
            backups.Make(BackupKind.Upgrade, Morning).Name };

        Assert.Equal(
            [
                "studio-20261125T090000Z-asked.db", "studio-20261125T090000Z-before-upgrade-of-10.db",
                "studio-20261125T090000Z-before-upgrade-of-10-2.db",
            ],
            names);
    }

    [Fact]
    public void What_a_crash_left_goes_with_the_next_one()
    {
        Directory.CreateDirectory(backups.Folder);
        var left = Path.Combine(backups.Folder, "studio-20261124T090000Z-daily.db.unfinished");
        var foreign = Path.Combine(backups.Folder, "holiday.jpg");
        File.WriteAllText(left, "half of it");
        File.WriteAllText(left + "-journal", "what lay beside it");
        File.WriteAllText(foreign, "not ours");

        backups.Make(BackupKind.Daily, Morning);

        Assert.Empty(Directory.GetFiles(backups.Folder, "*.unfinished*"));
        Assert.True(File.Exists(foreign));
    }

    [Fact]
    public void Half_a_copy_takes_no_room_until_the_next_one()
    {
        var inTheWay = Path.Combine(backups.Folder, "studio-20261125T090000Z-daily.json.unfinished");
        Directory.CreateDirectory(inTheWay);

        Assert.Throws<UnauthorizedAccessException>(() => backups.Make(BackupKind.Daily, Morning));

        Assert.Equal(["studio.lock"], Directory.GetFiles(backups.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_copy_without_manifest_or_with_another_s_does_not_count()
    {
        var made = backups.Make(BackupKind.Daily, Morning);
        var other = Path.Combine(backups.Folder, "studio-20261126T090000Z-daily.db");
        File.Copy(backups.FileOf(made), other);
        Assert.Equal([made.Name], backups.All().Select(one => one.Name));

        File.Copy(Path.ChangeExtension(backups.FileOf(made), ".json"), Path.ChangeExtension(other, ".json"));
        Assert.Equal([made.Name], backups.All().Select(one => one.Name));
        File.WriteAllText(Path.ChangeExtension(other, ".json"), """{"name": "studio-20261126""");
        Assert.Equal([made.Name], backups.All().Select(one => one.Name));
        Assert.StartsWith("No manifest", Proof.Of(other)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_newest_good_one_is_one_whose_bytes_are_still_right()
    {
        var older = backups.Make(BackupKind.Daily, Morning.AddDays(-1));
        var newer = backups.Make(BackupKind.Daily, Morning);
        Assert.Equal(newer.Name, backups.NewestGood()?.Name);

        Flip(backups.FileOf(newer), 5000);

        Assert.Equal(older.Name, backups.NewestGood()?.Name);
        Assert.Equal(["Its SHA-256 is not that of its manifest."], Proof.Of(backups.FileOf(newer)));
    }

    [Fact]
    public void A_damaged_studio_makes_no_backup_and_is_told_from_a_bad_copy()
    {
        var good = backups.Make(BackupKind.Daily, Morning.AddDays(-1));
        studio.File.Dispose();
        using (var raw = Dump.Raw(studio.Path))
        {
            raw.Execute("update lot_sum set units = units + 1 where lot_id = 1");
        }

        var no = Assert.Throws<UnprovenBackupException>(() => backups.Make(BackupKind.Daily, Morning));

        Assert.True(no.IsStudioDamaged);
        Assert.Equal("1 lots are not the sum of their lines.", no.Message);
        Assert.Equal([good.Name], backups.All().Select(one => one.Name));
        Assert.Empty(Directory.GetFiles(backups.Folder, "*.unfinished"));
    }

    [Fact]
    public void Where_there_is_no_studio_none_is_made()
    {
        var nowhere = BackupFolder.Of(Path.Combine(Path.GetDirectoryName(studio.Path)!, "other.db"));

        Assert.Throws<UnreadableStudioException>(() => nowhere.Make(BackupKind.Asked, Morning));
        Assert.False(Directory.Exists(nowhere.Folder));
    }

    [Fact]
    public void While_one_is_made_no_other_is()
    {
        Directory.CreateDirectory(backups.Folder);
        using var other = FileClaim.On(Path.Combine(backups.Folder, "studio"));

        Assert.Throws<BackupUnderWayException>(() => backups.Make(BackupKind.Daily, Morning));
    }

    [Fact]
    public void Studios_side_by_side_keep_their_backups_apart()
    {
        backups.Make(BackupKind.Daily, Morning);
        var path = Path.Combine(Path.GetDirectoryName(studio.Path)!, "studio-two.db");
        StudioFile.Open(path).Dispose();
        var others = BackupFolder.Of(path);
        others.Make(BackupKind.Daily, Morning);

        Assert.Equal("studio-two-20261125T090000Z-daily.db", Assert.Single(others.All()).Name);
        Assert.Equal("studio-20261125T090000Z-daily.db", Assert.Single(backups.All()).Name);
    }

    internal static void Flip(string file, int at)
    {
        var bytes = File.ReadAllBytes(file);
        bytes[at] ^= 1;
        File.WriteAllBytes(file, bytes);
    }

    private static T OnAnotherThread<T>(Func<T> work) => Task.Run(work).GetAwaiter().GetResult();
}
