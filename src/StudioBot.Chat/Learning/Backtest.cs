using StudioBot.Chat.Coats;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;

namespace StudioBot.Chat.Learning;

/// <summary>Every past estimate against what happened, in lines.</summary>
public static class Backtest
{
    /// <summary>A line for each kind of estimate, then one for each estimate, the oldest first.</summary>
    /// <param name="studio">The records.</param>
    /// <param name="now">The moment up to which they are looked at.</param>
    public static IReadOnlyList<string> Of(Studio studio, DateTimeOffset now)
    {
        List<(string Kind, string Unit, IReadOnlyList<PastGuess> Guesses)> all =
        [
            .. studio.Practice.Techniques.Select(technique => (
                $"paint, {technique.Name}", "mm", StudioFilms.Past(studio.Technique(technique.Name), studio))),
            ("orders", "days", Deliveries.Past(studio)),
            ("shelf lasts", "days", StockCovers.Past(studio, now)),
            (Opens, "h", CurePaces.Past(studio.View, studio.Practice)),
            ("gels", "min", StudioGels.Past(studio)),
            ("flow of thinned batches", "%", StudioFlow.Past(studio)),
            ("ready, as poured", "days", StudioDryings.Past(new PieceReckoning(studio.View, studio.Practice, now))),
        ];
        all.RemoveAll(kind => kind.Guesses.Count == 0);
        return all.Count == 0
            ? ["Nothing to hold estimates against yet: no pour was measured, no piece called dry, no coat tacky or "
                + "gelled, no third order came, no purchase used up, no batch read before and after it was thinned."]
            : [
                .. all.Select(kind => Line(kind.Kind, kind.Unit, kind.Guesses)),
                "",
                .. all.SelectMany(kind => kind.Guesses.Select(one => Line(kind.Kind, kind.Unit, one, studio))),
            ];
    }

    private static string Line(string kind, string unit, IReadOnlyList<PastGuess> guesses) =>
        Accuracy.Of(guesses) is { } found
            ? $"{kind}: {found.Count}, off by {Show.Number(found.Off, 2)} {unit} in the middle, {Usual(kind)} by "
                + $"{Show.Number(found.UsualOff, 2)} {unit}; {Came(kind, found)}"
            : $"{kind}: {guesses.Count}, too few to tell";

    private const string Opens = "resin opens";

    // A coat is told to open no earlier than its sheet has it, however early others did.
    private static string Came(string kind, Accuracy found) => kind == Opens && found.IsSooner
        ? $"{found.Sooner} opened sooner than told; nothing is told sooner than its sheet has it"
        : $"{found.Came}, 80 % is aimed at";

    private static string Usual(string kind) => kind == "shelf lasts" ? "the last four weeks" : "common practice";

    private static string High(PastGuess one) =>
        double.IsInfinity(one.High) ? "or more" : $"to {Show.Number(one.High, 2)}";

    private static string Line(string kind, string unit, PastGuess one, Studio studio) =>
        $"{studio.Zone.DateOf(one.At):yyyy-MM-dd} {one.What}, {kind}: told {Show.Number(one.Own, 2)} "
        + $"({Show.Number(one.Low, 2)} {High(one)}), "
        + $"{Usual(kind)} {Show.Number(one.Usual, 2)}, "
        + $"came {Show.Number(one.Happened, 2)} {unit}{(one.IsHeld ? "" : ", outside")}";
}
