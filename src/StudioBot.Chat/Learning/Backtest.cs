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
            ("resin opens", "h", CurePaces.Past(studio.View, studio.Practice)),
            ("flow of thinned batches", "%", StudioFlow.Past(studio)),
            ("ready, as poured", "days", StudioDryings.Past(new PieceReckoning(studio.View, studio.Practice, now))),
        ];
        all.RemoveAll(kind => kind.Guesses.Count == 0);
        return all.Count == 0
            ? ["Nothing to hold estimates against yet: no pour was measured, no piece called dry, no coat tacky, no "
                + "third order came, no batch read before and after it was thinned."]
            : [
                .. all.Select(kind => Line(kind.Kind, kind.Unit, kind.Guesses)),
                "",
                .. all.SelectMany(kind => kind.Guesses.Select(one => Line(kind.Kind, kind.Unit, one, studio))),
            ];
    }

    private static string Line(string kind, string unit, IReadOnlyList<PastGuess> guesses) =>
        Accuracy.Of(guesses) is { } found
            ? $"{kind}: {found.Count}, off by {Show.Number(found.Off, 2)} {unit} in the middle, common practice by "
                + $"{Show.Number(found.UsualOff, 2)} {unit}; {Show.Share(found.Held)} came as told, 80 % is aimed at"
            : $"{kind}: {guesses.Count}, too few to tell";

    private static string Line(string kind, string unit, PastGuess one, Studio studio) =>
        $"{studio.Zone.DateOf(one.At):yyyy-MM-dd} {one.What}, {kind}: told {Show.Number(one.Own, 2)} "
        + $"({Show.Number(one.Low, 2)} to {Show.Number(one.High, 2)}), common practice {Show.Number(one.Usual, 2)}, "
        + $"came {Show.Number(one.Happened, 2)} {unit}{(one.IsHeld ? "" : ", outside")}";
}
