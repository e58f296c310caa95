using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Coats;

namespace StudioBot.Chat.Coats;

/// <summary>The hours of a coat in lines of a reply, in studio time and in steps of ten minutes.</summary>
internal static class CoatHours
{
    private static readonly TimeSpan Step = TimeSpan.FromMinutes(10);

    /// <summary>Next coat from Thu 14:10 to Fri 02:10; or why nobody can say.</summary>
    public static string Window(CoatReckoning coat, Turn turn) => coat.Window switch
    {
        Finding<RecoatWindow>.None none => $"No window: {none.Why}.",
        Finding<RecoatWindow>.Cautioned cautioned =>
            Between(cautioned.Value, turn) + Grounds(coat.Pace) + $" {Sentences.Of(cautioned.Caution)}",
        _ => Between(coat.KnownWindow!, turn) + Grounds(coat.Pace),
    };

    /// <summary>What the window rests on beside the sheet: By 3 own reports, 1.2 times the sheet's time. Empty where
    /// that is the sheet alone.</summary>
    public static string Grounds(CurePace pace) => pace.Reports == 0
        ? ""
        : $" By {pace.Reports} own {(pace.Reports == 1 ? "report" : "reports")}, "
            + $"{Show.Number(pace.Factor, 2)} times the sheet's time; it closes no later.";

    /// <summary>Move it from Fri 20:00, cured about 3 Dec; or why nobody can say. Empty where the window says so.
    /// </summary>
    public static string Cure(CoatReckoning coat, Turn turn) => coat.KnownCure is not { } cure
        ? ""
        : $"May be moved from {Show.Moment(Later(cure.HandlingBy), turn)}; " + (Full(coat) is { } full
            ? $"cured by {Show.Date(turn.Zone.DateOf(full), turn)}."
            : $"full cure: {((Finding<DateTimeOffset>.None)cure.FullCure).Why}.");

    /// <summary>When it is fully cured; none where nobody can say.</summary>
    public static DateTimeOffset? Full(CoatReckoning coat) => coat.KnownCure?.FullCure switch
    {
        Finding<DateTimeOffset>.Found found => found.Value,
        Finding<DateTimeOffset>.Cautioned cautioned => cautioned.Value,
        _ => null,
    };

    // The late opening and the early closing: then it is surely open.
    private static string Between(RecoatWindow window, Turn turn)
    {
        var opens = window.OpensBy < window.ClosesFrom ? window.OpensBy : window.OpensFrom;
        var (from, to) = (Later(opens), Earlier(window.ClosesFrom));
        var end = turn.Zone.DateOf(from) == turn.Zone.DateOf(to) ? Show.Clock(to, turn) : Show.Moment(to, turn);
        return $"Next coat from {Show.Moment(from, turn)} to {end}.";
    }

    private static DateTimeOffset Earlier(DateTimeOffset moment) => moment.AddTicks(-(moment.UtcTicks % Step.Ticks));

    private static DateTimeOffset Later(DateTimeOffset moment) =>
        moment.UtcTicks % Step.Ticks == 0 ? moment : Earlier(moment) + Step;
}
