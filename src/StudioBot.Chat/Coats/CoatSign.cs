using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Pieces;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Coats;

/// <summary>What a note said of how far a coat had gone.</summary>
/// <param name="At">When.</param>
/// <param name="Coat">Of which coat, by its sheet alone.</param>
internal sealed record CoatSign(DateTimeOffset At, CoatReckoning Coat)
{
    /// <summary>The signs in the records, the earliest first.</summary>
    /// <param name="word">A word in the note.</param>
    /// <param name="isSign">Whether a note is one.</param>
    /// <param name="most">Of so many pieces, the last noted.</param>
    /// <param name="view">The records.</param>
    /// <param name="practice">The resins.</param>
    public static IReadOnlyList<CoatSign> Of(
        string word, Func<string, bool> isSign, int most, StudioView view, TradePractice practice)
    {
        List<int> pieces = [.. view.Pieces.Noted(word, most)];
        if (pieces.Count == 0)
        {
            return [];
        }

        List<List<PieceLine>> all = [.. view.Pieces.Lines(pieces).GroupBy(line => line.Number)
            .Select(own => own.ToList())];
        var since = all.SelectMany(own => own).Select(line => line.At).DefaultIfEmpty().Min();
        var readings = view.Rooms.Readings(since - CoatReckoning.OldestAir);
        var rooms = Recording.PiecePlace.Rooms(view);

        // Pieces coated from one cup are one: what the first of them says, the others say again.
        return
        [
            .. all.SelectMany(own => Of(own, isSign, readings, rooms, practice)).OrderBy(sign => sign.At)
                .DistinctBy(sign => (sign.Coat.LaidAt, sign.Coat.System.Name)),
        ];
    }

    // The first on a coat: later ones only say that it is so still. One that failed was mixed or cured wrong.
    private static IEnumerable<CoatSign> Of(
        List<PieceLine> lines,
        Func<string, bool> isSign,
        IReadOnlyList<RoomReading> readings,
        Func<string?, string?> rooms,
        TradePractice practice)
    {
        if (lines.Any(line => line.What is PieceEvent.Failed))
        {
            yield break;
        }

        HashSet<DateTimeOffset> told = [];
        for (var at = 0; at < lines.Count; at++)
        {
            if (lines[at].What is PieceEvent.Note { Words: var note }
                && isSign(note)
                && CoatReckoning.Of([.. lines.Take(at)], readings, rooms, practice)
                    is { HasFailed: false, IsSanded: false } coat
                && told.Add(coat.LaidAt))
            {
                yield return new CoatSign(lines[at].At, coat);
            }
        }
    }
}
