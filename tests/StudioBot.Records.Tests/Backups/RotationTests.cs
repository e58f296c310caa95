using System.Globalization;
using CsCheck;
using StudioBot.Records.Backups;

namespace StudioBot.Records.Tests.Backups;

public sealed class RotationTests
{
    private static readonly DateTimeOffset Night = new(2025, 11, 1, 3, 40, 0, TimeSpan.Zero);

    // A calendar of 2026 has the weeks: 26 November is a Thursday.
    [Fact]
    public void Of_more_than_a_year_of_nights_seven_days_four_weeks_and_twelve_months_are_left()
    {
        List<Backup> all = [];
        for (var night = Night; night < Night.AddDays(391); night = night.AddDays(1))
        {
            Add(all, BackupKind.Daily, night);
        }

        Assert.Equal(
            [
                "2026-11-26", "2026-11-25", "2026-11-24", "2026-11-23", "2026-11-22", "2026-11-21", "2026-11-20",   // seven days
                "2026-11-15", "2026-11-08",                                                                     // four weeks
                "2026-10-31", "2026-09-30", "2026-08-31", "2026-07-31", "2026-06-30", "2026-05-31",               // twelve months
                "2026-04-30", "2026-03-31", "2026-02-28", "2026-01-31", "2025-12-31",
            ],
            all.OrderByDescending(one => one.MadeAt).Select(one => one.MadeAt.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void The_last_three_from_before_an_upgrade_stay_however_old_and_push_out_no_other()
    {
        List<Backup> all = [];
        for (var year = 0; year < 5; year++)
        {
            Add(all, BackupKind.Upgrade, Night.AddYears(-year));
        }

        Add(all, BackupKind.Daily, Night);

        Assert.Equal([2025, 2024, 2023], all.Where(one => one.Kind == BackupKind.Upgrade).Select(one => one.MadeAt.Year)
            .OrderDescending());
        Assert.Single(all, one => one.Kind == BackupKind.Daily);
    }

    [Fact]
    public void Of_one_day_the_last_stays()
    {
        List<Backup> all = [];
        Add(all, BackupKind.Daily, Night);
        Add(all, BackupKind.Asked, Night.AddHours(5));
        Add(all, BackupKind.Asked, Night.AddHours(9));

        Assert.Equal(Night.AddHours(9), Assert.Single(all).MadeAt);
    }

    [Fact]
    public void The_one_that_was_just_made_stays_whatever_the_clock_says_and_there_are_never_more_than_twenty_six()
    {
        Gen.Select(Gen.Int[-20_000, 2_000], Gen.Enum<BackupKind>()).Array[1, 80].Sample(
            made =>
            {
                List<Backup> all = [];
                foreach (var (hours, kind) in made)
                {
                    var one = Add(all, kind, Night.AddHours(hours));
                    Assert.Contains(one, all);
                    Assert.InRange(all.Count, 1, 7 + 4 + 12 + 3 + 1);
                }
            },
            iter: 300,
            threads: 1);
    }

    private static Backup Add(List<Backup> all, BackupKind kind, DateTimeOffset at)
    {
        var made = new Backup($"{all.Count} {at:u} {kind}.db", kind, at, 6, 0, "", new Dictionary<string, long>());
        all.Add(made);
        var gone = Rotation.Gone(all, made);
        all.RemoveAll(gone.Contains);
        return made;
    }
}
