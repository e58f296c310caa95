using System.Globalization;

namespace StudioBot.Records.Backups;

/// <summary>Which backups stay: the last of each of seven days, four weeks and twelve months that have one, and the
/// last three from before an upgrade. Days are those of UTC, weeks begin on Monday.</summary>
internal static class Rotation
{
    private const int Days = 7;
    private const int Weeks = 4;
    private const int Months = 12;
    private const int Upgrades = 3;

    /// <summary>Those that go. The one that was just made never does, whatever the clock said when it was made.
    /// </summary>
    public static IReadOnlyList<Backup> Gone(IReadOnlyList<Backup> all, Backup made)
    {
        var newestFirst = all.OrderByDescending(one => one.MadeAt).ThenByDescending(one => one.Name).ToList();
        var (before, usual) = (
            newestFirst.Where(one => one.Kind == BackupKind.Upgrade),
            newestFirst.Where(one => one.Kind != BackupKind.Upgrade).ToList());
        var stay = before.Take(Upgrades)
            .Concat(LastOfEach(usual, Days, one => one.MadeAt.UtcDateTime.Date))
            .Concat(LastOfEach(usual, Weeks, one => (
                ISOWeek.GetYear(one.MadeAt.UtcDateTime), ISOWeek.GetWeekOfYear(one.MadeAt.UtcDateTime))))
            .Concat(LastOfEach(usual, Months, one => (one.MadeAt.UtcDateTime.Year, one.MadeAt.UtcDateTime.Month)))
            .Select(one => one.Name)
            .Append(made.Name)
            .ToHashSet();
        return [.. newestFirst.Where(one => !stay.Contains(one.Name))];
    }

    private static IEnumerable<Backup> LastOfEach<T>(
        IReadOnlyList<Backup> newestFirst, int spans, Func<Backup, T> span) =>
        newestFirst.DistinctBy(span).Take(spans);
}
