using StudioBot.Craft.Stock;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What a material is used by, over the last eight weeks.</summary>
/// <param name="Rate">What a day takes, days without use counted.</param>
/// <param name="Days">How many days it was looked at.</param>
/// <param name="Uses">On how many of them it was used.</param>
internal sealed record StockUse(DailyUse Rate, int Days, int Uses)
{
    /// <summary>How the weeks to come differ from those, which the rate has in it; none where no year is on record, or
    /// too little of it.</summary>
    public Season? Season { get; init; }

    /// <summary>What was used beside that for workshops, on their days and the days after, in the material's own unit;
    /// zero or more.</summary>
    public double Apart { get; init; }

    /// <summary>What a day took in the last four weeks, whatever was before.</summary>
    public double Lately { get; init; }

    /// <summary>So many days those are.</summary>
    public const int LatelyDays = 4 * 7;

    /// <summary>How far back is looked.</summary>
    public const int MostDays = 8 * 7;

    // A book a few days old would make every first use a habit (common practice).
    /// <summary>So many days are looked at, at the least.</summary>
    public const int FewestDays = 2 * 7;

    /// <summary>It was never used.</summary>
    public static StockUse Nothing { get; } = new(new DailyUse(0, 0, IsLittleData: true), MostDays, 0);

    /// <summary>Whether a line of the book is use; what comes back is taken off again.</summary>
    public static bool IsUse(StockReason reason) => StockRecords.Uses.Contains(reason);
}
