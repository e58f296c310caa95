using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Pieces;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Coats;

/// <summary>What a note said of how far a coat had gone.</summary>
/// <param name="At">When.</param>
/// <param name="Coat">Of which coat, by its sheet alone.</param>
/// <param name="NotYet">When a look before was noted that found it not so; none where none was.</param>
internal sealed record CoatSign(DateTimeOffset At, CoatReckoning Coat, DateTimeOffset? NotYet = null)
{
    /// <summary>The signs in the records, the earliest first.</summary>
    /// <param name="word">A word in the note.</param>
    /// <param name="isSign">Whether a note is one.</param>
    /// <param name="isNotYet">Whether a note says that it is not so yet.</param>
    /// <param name="most">Of so many pieces, the last noted.</param>
    /// <param name="view">The records.</param>
    /// <param name="practice">The resins.</param>
    public static IReadOnlyList<CoatSign> Of(
        string word,
        Func<string, bool> isSign,
        Func<string, bool> isNotYet,
        int most,
        StudioView view,
        TradePractice practice)
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
            .. all.SelectMany(own => Of(own, isSign, isNotYet, readings, rooms, practice)).OrderBy(sign => sign.At)
                .GroupBy(sign => (sign.Coat.LaidAt, sign.Coat.System.Name))
                .Select(cup => Together([.. cup])),
        ];

        // The first of a cup, and the last look before it at any of its pieces.
        static CoatSign Together(List<CoatSign> cup) =>
            cup[0] with { NotYet = cup.Max(sign => sign.NotYet < cup[0].At ? sign.NotYet : null) };
    }

    // The first on a coat: later ones only say that it is so still. One that failed was mixed or cured wrong.
    private static IEnumerable<CoatSign> Of(
        List<PieceLine> lines,
        Func<string, bool> isSign,
        Func<string, bool> isNotYet,
        IReadOnlyList<RoomReading> readings,
        Func<string?, string?> rooms,
        TradePractice practice)
    {
        if (lines.Any(line => line.What is PieceEvent.Failed))
        {
            yield break;
        }

        HashSet<DateTimeOffset> told = [];
        (DateTimeOffset Coat, DateTimeOffset At)? notYet = null;
        for (var at = 0; at < lines.Count; at++)
        {
            if (lines[at].What is not PieceEvent.Note { Words: var note }
                || !(isSign(note) || isNotYet(note))
                || CoatReckoning.Of([.. lines.Take(at)], readings, rooms, practice)
                    is not { HasFailed: false, IsSanded: false } coat)
            {
                continue;
            }

            if (isNotYet(note))
            {
                notYet = (coat.LaidAt, lines[at].At);
            }
            else if (told.Add(coat.LaidAt))
            {
                yield return new CoatSign(
                    lines[at].At, coat, notYet is (var of, var moment) && of == coat.LaidAt ? moment : null);
            }
        }
    }
}
