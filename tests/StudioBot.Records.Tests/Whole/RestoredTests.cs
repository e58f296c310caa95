using CsCheck;
using StudioBot.Records.Backups;
using StudioBot.Records.Sample;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Whole;

/// <summary>Backed up and brought back, random studios are the same to the last value; a failure prints its seed, and CsCheck_Seed takes it
/// back.</summary>
public sealed class RestoredTests
{
    private const int Studios = 50;

    [Fact]
    public void What_is_restored_is_what_was_backed_up() =>
        Gen.Select(Gen.Int[0, HistoriesTests.Undo], Gen.Int[0, 999], Gen.Int[0, 999]).Array[0, 60].Sample(
            RoundTrip, iter: Studios, threads: 1);

    private static void RoundTrip((int What, int A, int B)[] steps)
    {
        using var studio = new TemporaryStudio();
        studio.File.Write(session =>
        {
            SampleStudio.WriteInto(session);
            foreach (var step in steps)
            {
                HistoriesTests.Live(session, step);
            }
        });

        var backups = BackupFolder.Of(studio.Path);
        var made = backups.Make(BackupKind.Asked, Morning);
        var before = Dump.Of(studio.Path);
        studio.File.Write(session => HistoriesTests.Live(session, (1, 5, 5)));
        Assert.NotEqual(before, Dump.Of(studio.Path));
        studio.File.Dispose();

        Restoring.Restore(studio.Path, backups.FileOf(made), Morning);
        studio.Reopen();

        Assert.Equal(before, Dump.Of(studio.Path));
    }
}
