using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Faults;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Learning;

/// <summary>What the pieces with a fault share, by this studio's records: pieces with it compared with pieces without
/// it over how, with what, from what and in what air they were poured, from what they were coated and in which rooms
/// they lay.</summary>
/// <remarks>Small counts say that they are too few; that many things are looked at is reckoned with
/// (<see cref="FaultTable"/>, <see cref="ManyLooks"/>). Who made a piece is not looked at.</remarks>
internal static class FaultPatterns
{
    // Older ones were other paints (common practice).
    private const int MostPieces = 300;

    // Of fewer with the fault, or with a thing, nothing can be told.
    private const int Enough = 3;
    private const double Chance = 0.05;

    // In a note of their own these tell of a colour, a wish or the weather, not of a fault.
    private static readonly HashSet<string> OnlyInQuestions =
    [
        "cells", "brown", "grey", "yellow", "yellows", "amber", "thin", "thick", "soft", "slow", "drying", "marks",
        "runs",
    ];

    private static readonly char[] Between = [' ', ',', '.', ';', ':', '!', '?', '(', ')'];

    private static readonly HashSet<string> Denials = ["no", "not", "without", "never", "none"];

    /// <summary>It in a line; none where no piece has the fault on record.</summary>
    public static string? Of(string fault, Studio studio)
    {
        List<int> numbers = [.. studio.View.Pieces.Numbers().TakeLast(MostPieces)];
        List<FaultWords> told = [.. studio.Words.Faults.Select(one => one with
        {
            Phrases = [.. one.Phrases.Where(phrase => phrase is not [var only] || !OnlyInQuestions.Contains(only))],
        })];
        var lines = studio.View.Pieces.Lines(numbers);
        var faulty = lines.Where(Tells).Select(line => line.Number).ToHashSet();
        return faulty.Count switch
        {
            0 => null,
            < Enough => $"Here {Count(faulty.Count)} of {numbers.Count} on record: too few to tell what they share.",
            _ => Shared(
                faulty,
                studio.View.Pieces.These(numbers),
                [.. lines.GroupBy(line => line.Number).SelectMany(own => own.TakeWhile(line => !Tells(line)))],
                studio),
        };

        bool Tells(PieceLine line) => Said(line.What) is { } words && IsOf(fault, words, told);
    }

    private static string Shared(
        HashSet<int> faulty, IReadOnlyList<Piece> pieces, IReadOnlyList<PieceLine> lines, Studio studio)
    {
        var things = new FaultThings(pieces, lines, studio);
        var all = $"Here {Count(faulty.Count)} of {pieces.Count} on record";
        List<(string What, FaultTable Table)> looks =
        [
            .. Looks(faulty, pieces, things.Of),
            .. Looks(faulty, [.. pieces.Where(piece => things.Coated.Contains(piece.Number))], things.OfCoat),
        ];
        var chances = ManyLooks.Corrected([.. looks.Select(look => look.Table.ByChance)]);
        var found = looks.Select((look, at) => (look.What, look.Table, Chance: chances[at]))
            .Where(look => look.Chance < Chance)
            .OrderBy(look => look.Chance)
            .FirstOrDefault();
        return found.Table is not { } table
            ? $"{all}: nothing they share stands out from chance."
            : $"{all}: {table.FaultyWith} of {table.With} {found.What}, {table.FaultyWithout} of {table.Without} "
                + "without; chance alone hardly does that.";
    }

    private static IEnumerable<(string What, FaultTable Table)> Looks(
        HashSet<int> faulty, IReadOnlyList<Piece> among, Func<Piece, IEnumerable<string>> things)
    {
        var all = among.Count(piece => faulty.Contains(piece.Number));
        return among.SelectMany(piece => things(piece).Distinct().Select(what => (what, piece)))
            .GroupBy(pair => pair.what, pair => pair.piece)
            .Select(same => (same.Key, Table: Table(same.ToList())))
            .Where(look => look.Table.With >= Enough && look.Table.Without >= Enough);

        FaultTable Table(List<Piece> with)
        {
            var both = with.Count(piece => faulty.Contains(piece.Number));
            return new FaultTable(both, with.Count - both, all - both, among.Count - with.Count - (all - both));
        }
    }

    private static string? Said(PieceEvent what) => what switch
    {
        // What a use writes by itself names materials.
        PieceEvent.Note note =>
            note.Words.StartsWith(UsedCommand.NoteLead, StringComparison.Ordinal) ? null : note.Words,
        PieceEvent.Bin bin => bin.Why,
        PieceEvent.Failed failed => failed.Why,
        PieceEvent.Photo photo => photo.Words,
        _ => null,
    };

    // “No cracks at all” tells of none.
    private static bool IsOf(string fault, string words, IReadOnlyList<FaultWords> faults)
    {
        var said = words.ToLowerInvariant().Split(Between, StringSplitOptions.RemoveEmptyEntries).ToHashSet();
        return (!said.Overlaps(Denials) || fault.Split(' ').Any(Denials.Contains))
            && FaultSlot.Best(faults, said) == fault;
    }

    private static string Count(int count) => count == 1 ? "1 piece" : $"{count} pieces";
}
