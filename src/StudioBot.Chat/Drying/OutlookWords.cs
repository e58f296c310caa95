using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Air;
using StudioBot.Craft.Drying;

namespace StudioBot.Chat.Drying;

/// <summary>How an outlook is said: best guess, interval, and what it rests on; or no day and why.</summary>
/// <param name="look">The outlook.</param>
/// <param name="moment">The moment it was reckoned for, as the studio's wall shows it.</param>
internal sealed class OutlookWords(PieceOutlook look, StudioMoment moment)
{
    /// <summary>The answer in a few words: ready 3–9 Dec, likely 5 Dec.</summary>
    public string Answer => look.Outlook switch
    {
        ReadyOutlook.Expected({ Advice: ReadyAdvice.LikelyReady }) => "likely dry, check by hand",
        ReadyOutlook.Expected({ Advice: ReadyAdvice.CheckByHand } estimate) =>
            $"check by hand, dry by {Show.Day(estimate.LatestDay(moment.Today))}",
        ReadyOutlook.Expected(var estimate) =>
            $"ready {Days(estimate)}, likely {Show.Day(estimate.LikelyDay(moment.Today))}",
        ReadyOutlook.NoDay { NotBefore: { } least } => $"not before {Show.Day(moment.Day(look.Now + least))}",
        ReadyOutlook.NoDay { Kind: NoReadyDay.Overdue } => "overdue, look at it",
        _ => "no ready day",
    };

    /// <summary>The answer in a list: 3–9 Dec.</summary>
    public string InList => look.Outlook switch
    {
        ReadyOutlook.Expected({ Advice: not ReadyAdvice.Wait }) => "check now",
        ReadyOutlook.Expected(var estimate) => Days(estimate),
        ReadyOutlook.NoDay { NotBefore: { } least } => $"after {Show.Day(moment.Day(look.Now + least))}",
        ReadyOutlook.NoDay { Kind: NoReadyDay.Overdue } => "overdue",
        _ => "no day",
    };

    /// <summary>What the answer rests on, or why there is no day and what would help; one sentence or a few.</summary>
    public string Grounds => look.Outlook switch
    {
        ReadyOutlook.Expected(var estimate) => Sentence(
            Odds(estimate), Rests(estimate.Grounds), Lately(look.Change), Room(estimate)),
        ReadyOutlook.NoDay { Kind: NoReadyDay.MassRose } none =>
            Sentence($"Weight rose{Rise()}: damp air or a slip, no estimate.", Sentences.Of(none.Instead)),
        ReadyOutlook.NoDay none => Sentence(Sentences.Of(none.Why), Sentences.Of(none.Instead)),
        _ => "",
    };

    /// <summary>The whole in sentences: Ready 3–9 Dec, likely 5 Dec. From 4 weighings.</summary>
    public string Whole => $"{Sentences.Of(Answer)} {Grounds}";

    /// <summary>Two days as a span: 3–9 Dec, 28 Nov–8 Dec, or the one day.</summary>
    public static string Span(DateOnly from, DateOnly to) => from >= to ? Show.Day(to)
        : (from.Year, from.Month) == (to.Year, to.Month) ? $"{from.Day}–{Show.Day(to)}"
        : $"{Show.Day(from)}–{Show.Day(to)}";

    private string Days(ReadyEstimate estimate) =>
        Span(estimate.EarliestDay(moment.Today), estimate.LatestDay(moment.Today));

    // Only where they call for a hand: a day far off needs no odds.
    private static string Odds(ReadyEstimate estimate) =>
        estimate.Advice == ReadyAdvice.Wait ? "" : $"{Show.Share(estimate.Probability)} likely dry now.";

    private static string Rests(ReadyGrounds grounds)
    {
        var unused = grounds.Use switch
        {
            WeighingsUse.None => ", no weighings yet",
            WeighingsUse.TooFew => $"; {Count(grounds.Noted, "weighing")} noted, too few since the skin closed",
            WeighingsUse.ScaleTooRough => "; weighings not used, the scale is too rough for so little paint",
            _ => "",
        };
        if (grounds.IsPracticeOnly)
        {
            return $"Common practice{unused}.";
        }

        List<string> rests = [];
        Add(grounds.Weighings, "weighing");
        Add(grounds.Words, "check by hand", "checks by hand");
        Add(grounds.OwnPieces, "finished piece");
        return $"From {Sentences.And(rests)}{unused}.";

        void Add(int count, string one, string? many = null)
        {
            if (count > 0)
            {
                rests.Add(Count(count, one, many));
            }
        }
    }

    private static string Lately(DryingChange? change) => change is null ? ""
        : $"The last {change.Pieces} pieces dried {(change.Factor > 1 ? "slower" : "faster")} than those before.";

    private static string Room(ReadyEstimate estimate) => estimate.Grounds.Pace switch
    {
        PaceGrounds.Assumed => $"No room was read: {Show.Degrees(RoomAir.Assumed.Temperature)}, "
            + $"{Show.Share(RoomAir.Assumed.Humidity.Share)} taken.",
        PaceGrounds.OlderReadings => "Its room was not read for a week.",
        _ => "",
    };

    // By how much the last weighing is above the one before; nothing where that one had risen already.
    private string Rise() =>
        look.Known.Weighings.OrderBy(one => one.Elapsed).ToList() is [.., var before, var last]
        && last.Mass > before.Mass
            ? $" {Show.Number(last.Mass.Grams - before.Mass.Grams)} g"
            : "";

    private static string Count(int count, string one, string? many = null) =>
        $"{count} {(count == 1 ? one : many ?? one + "s")}";

    private static string Sentence(params IEnumerable<string> sentences) =>
        string.Join(' ', sentences.Where(sentence => sentence.Length > 0));
}
