using StudioBot.Chat.Coats;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;

namespace StudioBot.Chat.Recording;

/// <summary>What is said of a gel that was recorded.</summary>
internal static class GelTold
{
    /// <summary>What the sheet has, and what is learnt from it.</summary>
    /// <param name="gel">What was told; it is on record.</param>
    /// <param name="studio">The records, with it.</param>
    public static IEnumerable<Block> Of(StudioGels.Gel gel, Studio studio)
    {
        var (after, sheet) = (gel.Report.After, gel.Report.Sheet);
        var off = Show.Time((after - sheet).Duration());
        yield return new Block.Line($"By the sheet {Show.Time(sheet)}, as warm as it was: {off} "
            + $"{(after < sheet ? "sooner" : "later")}.");
        if (GelPace.IsSlip(gel.Report))
        {
            yield return new Block.Line(after > sheet
                ? "Over three times the sheet: seen late, or a slip? Kept, and left out of what is learnt."
                : "Under a third of the sheet: a hot cup, or a slip? Kept, and left out of what is learnt.");
        }

        yield return new Block.Line($"{Learnt(gel.System, studio)} The product's sheet comes first.");
    }

    private static string Learnt(ResinSystem system, Studio studio)
    {
        var pace = StudioGels.Of(studio).Pace(system);
        return $"{Times(pace)} {StudioGels.Trend(pace)}".Trim();
    }

    /// <summary>By 3 own gels, 0.84 times the sheet's time; never longer.</summary>
    public static string Times(GelPace pace) => pace.Reports == 0 ? "The sheet's time stands."
        : Show.Number(pace.Shortened, 2) is var times && times == "1"
            ? $"By {Reports(pace)} the sheet's time stands; never longer."
            : $"By {Reports(pace)}, {times} times the sheet's time; never longer.";

    // 3 own gels.
    private static string Reports(GelPace pace) => pace.Reports == 1 ? "1 own gel" : $"{pace.Reports} own gels";
}
