using System.Diagnostics;
using Dapper;
using StudioBot.Records.Backups;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;
using StudioBot.Records.Schema;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Backups;

/// <summary>What comes from outside is believed nothing; what is there is never written over.</summary>
public sealed class RestoringTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly BackupFolder backups;
    private readonly string backup;

    public RestoringTests()
    {
        backups = BackupFolder.Of(studio.Path);
        studio.File.Write(SampleStudio.WriteInto);
        backup = backups.FileOf(backups.Make(BackupKind.Daily, Morning));
        studio.File.Write(session => session.Members.Add("Later", Role.Member, Morning));
    }

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_studio_is_as_it_was_and_the_file_of_before_is_kept_whole()
    {
        // As after a crash: what was committed last stands in the log only.
        var crashed = studio.Path + ".crashed";
        foreach (var with in new[] { "", "-wal" })
        {
            File.Copy(studio.Path + with, crashed + with);
        }

        studio.File.Dispose();
        foreach (var with in new[] { "", "-wal" })
        {
            File.Move(crashed + with, studio.Path + with, overwrite: true);
        }

        var restored = Restoring.Restore(studio.Path, backup, Morning);

        Assert.Equal(new Restored(SchemaSteps.Newest, IsByManifest: true, studio.Path + ".before-restore-20261125T090000Z"), restored);
        Assert.False(File.Exists(studio.Path + "-wal"));
        Assert.Contains("Later", StudioFile.Glance(restored.KeptAs!, Names));
        studio.Reopen();
        Assert.DoesNotContain("Later", studio.File.Read(Names));
        Assert.Equal(Dump.Of(backup), Dump.Of(studio.Path));
    }

    [Fact]
    public void It_can_be_restored_again_and_again_and_each_file_of_before_is_kept()
    {
        studio.File.Dispose();

        var kept = Enumerable.Range(0, 3).Select(_ => Restoring.Restore(studio.Path, backup, Morning).KeptAs).ToList();

        Assert.Equal(3, kept.Distinct().Count());
        Assert.All(kept, path => Assert.True(File.Exists(path)));
    }

    [Fact]
    public void It_can_be_restored_where_there_is_none_yet()
    {
        var elsewhere = Path.Combine(Path.GetDirectoryName(studio.Path)!, "new", "place", "studio.db");

        Assert.Null(Restoring.Restore(elsewhere, backup, Morning).KeptAs);
        StudioFile.Open(elsewhere).Dispose();
        Assert.Equal(Dump.Of(backup), Dump.Of(elsewhere));
    }

    [Fact]
    public void An_older_one_is_backed_up_and_brought_up_to_date_when_it_is_opened()
    {
        var old = studio.Path + ".old";
        using (var raw = Dump.Raw(old))
        {
            SchemaSteps.Apply(raw, 3);
        }

        studio.File.Dispose();
        var restored = Restoring.Restore(studio.Path, old, Morning);
        studio.Reopen();
        studio.File.Dispose();

        Assert.Equal((3, false), (restored.Version, restored.IsByManifest));
        Assert.Equal(SchemaSteps.Newest, FileHeader.VersionOf(studio.Path));
        Assert.Equal(3, Assert.Single(backups.All(), one => one.Kind == BackupKind.Upgrade).Version);
    }

    [Fact]
    public void One_that_keeps_a_log_is_restored_as_its_file_stands()
    {
        studio.File.Dispose();
        var copied = studio.Path + ".copied";
        File.Copy(studio.Path, copied);

        Restoring.Restore(studio.Path, copied, Morning);

        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(studio.Path)!, "*.restoring*"));
        studio.Reopen();
        Assert.Contains("Later", studio.File.Read(Names));
    }

    [Fact]
    public void A_studio_that_is_open_is_left_alone()
    {
        Assert.Throws<StudioInUseException>(() => Restoring.Restore(studio.Path, backup, Morning));
        Assert.Contains("Later", studio.File.Read(Names));
    }

    [Fact]
    public void A_newer_one_is_refused_at_once_with_both_versions()
    {
        studio.File.Dispose();
        using (var raw = Dump.Raw(backup))
        {
            raw.Execute($"pragma user_version = {SchemaSteps.Newest + 3}");
        }

        var began = Stopwatch.GetTimestamp();
        var newer = Assert.Throws<NewerStudioException>(() => Restoring.Restore(studio.Path, backup, Morning));

        Assert.InRange(Stopwatch.GetElapsedTime(began), TimeSpan.Zero, TimeSpan.FromSeconds(1));
        Assert.Equal((SchemaSteps.Newest + 3, SchemaSteps.Newest), (newer.Found, newer.Known));
        NothingChanged();
    }

    [Theory]
    [InlineData("create trigger spy after insert on act begin delete from lot_sum; end", "The schema is not that of version 10.")]
    [InlineData("create view act_of as select 1", "The schema is not that of version 10.")]
    [InlineData("create table more (id integer)", "The schema is not that of version 10.")]
    [InlineData("drop trigger stock_entry_is_not_changed", "The schema is not that of version 10.")]
    [InlineData("pragma user_version = 0", "Version 0 of the schema is unknown here.")]
    [InlineData("pragma user_version = -1", "Version -1 of the schema is unknown here.")]
    [InlineData("update lot_sum set units = units + 1 where lot_id < 3", "2 lots are not the sum of their lines.")]
    [InlineData("pragma writable_schema = on; update sqlite_schema set sql = 'create table act (id)' where name = 'act'", "")]
    [InlineData("pragma writable_schema = on; update sqlite_schema set rootpage = 999999 where name = 'lot'", "")]
    [InlineData("pragma writable_schema = on; update sqlite_schema set rootpage = 2 where name = 'lot'", "")]
    public void One_that_was_tampered_with_is_refused(string done, string why)
    {
        studio.File.Dispose();
        File.Delete(Path.ChangeExtension(backup, ".json"));
        using (var raw = Dump.Raw(backup))
        {
            raw.Execute("pragma foreign_keys = off; " + done);
        }

        Refused(backup, why);
    }

    [Fact]
    public void One_whose_bytes_are_not_those_of_its_manifest_is_refused()
    {
        studio.File.Dispose();
        BackupFolderTests.Flip(backup, 100_000);

        Refused(backup, "Its SHA-256 is not that of its manifest.");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(15)]
    [InlineData(99)]
    [InlineData(4096)]
    [InlineData(100_000)]
    public void One_that_was_cut_short_is_refused(int length)
    {
        studio.File.Dispose();
        File.Delete(Path.ChangeExtension(backup, ".json"));
        using (var cut = new FileStream(backup, FileMode.Open))
        {
            cut.SetLength(length);
        }

        Refused(backup, length < 100 ? "It is no studio." : "");
    }

    [Fact]
    public void Something_else_is_refused()
    {
        studio.File.Dispose();
        var other = studio.Path + ".txt";
        File.WriteAllText(other, new string('x', 5000));
        Refused(other, "It is no studio.");
        Refused(studio.Path, "It is the studio itself.");

        using (var raw = Dump.Raw(other + ".db"))
        {
            raw.Execute("create table song (id integer)");
        }

        Refused(other + ".db", "Version 0 of the schema is unknown here.");
    }

    [Fact]
    public void One_that_is_larger_than_any_studio_is_refused_before_it_is_copied()
    {
        studio.File.Dispose();
        File.Delete(Path.ChangeExtension(backup, ".json"));
        using (var large = new FileStream(backup, FileMode.Open))
        {
            large.SetLength(Restoring.MostBytes + 1);   // a hole: it takes no room on the disk
        }

        Refused(backup, "It is larger than 4 GiB.");
    }

    // A journal beside a file may name any other file, to be rolled back or deleted.
    [Fact]
    public void What_lies_beside_it_is_not_looked_at()
    {
        studio.File.Dispose();
        var (journal, log) = (backup + "-journal", backup + "-wal");
        File.WriteAllBytes(journal, [0xd9, 0xd5, 0x05, 0xf9, 0x20, 0xa1, 0x63, 0xd7, .. new byte[5000]]);
        File.WriteAllText(log, "no log");

        Assert.True(Restoring.Restore(studio.Path, backup, Morning).IsByManifest);

        Assert.Equal(5008, new FileInfo(journal).Length);
        Assert.Equal("no log", File.ReadAllText(log));
        Assert.Equal(Dump.Of(studio.Path), Dump.Of(studio.Path));
    }

    private static IEnumerable<string> Names(StudioView view) => [.. view.Members.All().Select(one => one.Name)];

    private void Refused(string file, string why)
    {
        var no = Assert.Throws<RefusedRestoreException>(() => Restoring.Restore(studio.Path, file, Morning));
        Assert.StartsWith(why, no.Message, StringComparison.Ordinal);
        NothingChanged();
    }

    private void NothingChanged()
    {
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(studio.Path)!, "*.before-restore-*"));
        Assert.False(File.Exists(studio.Path + ".restoring"));
        studio.Reopen();
        Assert.Contains("Later", studio.File.Read(Names));
        studio.File.Dispose();
    }
}
