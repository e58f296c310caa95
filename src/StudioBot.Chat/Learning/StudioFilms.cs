using System.Text.RegularExpressions;
using StudioBot.Chat.Recording;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Learning;

/// <summary>What this studio's own pours tell of the paint a technique takes.</summary>
/// <remarks>A pour counts once both what was mixed and what was left in the cups are on record. One whose note says
/// that it ran short only says that the need was more.</remarks>
internal static partial class StudioFilms
{
    // Older ones were other paints and other hands (common practice).
    private const int MostPours = 80;
    private const int EnoughOfAMaker = 8;

    // A normal 80 % interval.
    private const double EightOfTen = 1.2816;

    /// <summary>The need on this surface; none where no own pour tells of it.</summary>
    /// <param name="technique">How it is poured, as the studio has set it.</param>
    /// <param name="surfaces">On what.</param>
    /// <param name="maker">Who pours; from eight pours on their own stand for themselves.</param>
    /// <param name="studio">The records.</param>
    public static LearntNeed? Of(Technique technique, SurfaceSet surfaces, string? maker, Studio studio)
    {
        var prior = Prior(technique, surfaces, studio);
        return From(technique, prior, FaceOverRim(surfaces), Poured(technique, studio), maker);
    }

    /// <summary>What would have been told before each of the last pours of a technique, the first of them first; what a
    /// face took in millimetres.</summary>
    /// <remarks>Pours that ran short, and slips, are no measure of an estimate.</remarks>
    public static IReadOnlyList<PastGuess> Past(Technique technique, Studio studio)
    {
        List<OwnPour> all = [.. Poured(technique, studio).OrderBy(one => one.Piece.PouredAt)];
        List<PastGuess> guesses = [];
        for (var at = 0; at < all.Count; at++)
        {
            var (piece, pour) = (all[at].Piece, all[at].Pour);
            var prior = Prior(technique, new SurfaceSet(piece.Surface, depth: piece.Depth), studio);
            var told = From(technique, prior, pour.FaceOverRim, all[..at], piece.Maker)?.Estimate
                ?? FilmEstimate.From(prior, []);
            var isSlip = PourSlips.Among([.. all[..(at + 1)].Select(one => one.Pour.Used)], prior.Mean)[^1];
            if (pour.End == PourEnd.Enough && !isSlip)
            {
                guesses.Add(new PastGuess(
                    $"piece {piece.Number}",
                    piece.PouredAt,
                    pour.Used.Millimetres,
                    told.Mean.Millimetres,
                    prior.Mean.Millimetres,
                    told.At(-EightOfTen).Millimetres,
                    told.At(EightOfTen).Millimetres));
            }
        }

        return guesses;
    }

    private static LearntNeed? From(
        Technique technique, FilmPrior prior, Length ratio, IReadOnlyList<OwnPour> all, string? maker)
    {
        var slips = PourSlips.Among([.. all.Select(one => one.Pour.Used)], prior.Mean);
        List<OwnPour> pours = [.. all.Where((_, at) => !slips[at])];
        if (pours.Count == 0)
        {
            return null;
        }

        var estimate = FilmEstimate.From(prior, [.. pours.Select(one => one.Pour)], ratio);
        List<OwnPour> own = [.. pours.Where(one => one.Piece.Maker == maker)];
        var isOwn = own.Count >= EnoughOfAMaker && own.Count < pours.Count;
        if (isOwn)
        {
            // What the others pour is believed of each, until their own say otherwise.
            var others = FilmEstimate.From(prior, [.. pours.Except(own).Select(one => one.Pour)]);
            estimate = FilmEstimate.From(
                new FilmPrior(others.Mean, FilmPrior.UsualWeight, others.Spread),
                [.. own.Select(one => one.Pour)],
                ratio);
        }

        return new LearntNeed(
            estimate,
            WithRunOff(technique, isOwn ? own : pours),
            isOwn ? maker : null,
            (isOwn ? own : pours).Min(one => one.Piece.PouredAt),
            [.. all.Where((_, at) => slips[at]).Select(one => one.Piece.Number).Order()]);
    }

    // Sides whose depth is given are inside what is learnt, and so have to be inside what is believed.
    private static FilmPrior Prior(Technique technique, SurfaceSet surfaces, Studio studio)
    {
        var usual = PourAmounts.For(technique, surfaces, 1, studio.Practice.Pours.SideFilm.Value);
        return new FilmPrior(usual.Need / surfaces.Faces, FilmPrior.UsualWeight, FilmPrior.UsualSpread);
    }

    private static List<OwnPour> Poured(Technique technique, Studio studio)
    {
        var numbers = studio.View.Pieces.Measured(technique.Name, MostPours);
        if (numbers.Count == 0)
        {
            return [];
        }

        var lines = studio.View.Pieces.Lines(numbers).ToLookup(line => line.Number);
        return [.. studio.View.Pieces.These(numbers)
            .Select(piece => Of(piece, [.. lines[piece.Number]]))
            .OfType<OwnPour>()
            .GroupBy(pour => pour.Act)
            .Select(OnePour)];
    }

    // Eight tiles from one cup are one pour: all of it over all their faces.
    private static OwnPour OnePour(IEnumerable<OwnPour> together)
    {
        List<OwnPour> all = [.. together];
        var faces = all.Aggregate(default(Area), (sum, one) => sum + one.Piece.Surface.Face);
        var used = all.Aggregate(default(Volume), (sum, one) => sum + one.Piece.Surface.Face * one.Pour.Used);
        return all[0] with { Pour = all[0].Pour with { Used = used / faces } };
    }

    private static OwnPour? Of(Piece piece, IReadOnlyList<PieceLine> lines)
    {
        var volumes = PourVolumes.Of(lines);
        if (volumes is not { Mixed: { } mixed, Left: { } left } || mixed <= left)
        {
            return null;
        }

        var poured = Volume.FromMillilitres(mixed.Millilitres - left.Millilitres);
        var hasRunShort = lines.Any(
            line => line.What is PieceEvent.Note { Words: var note } && RanShort().IsMatch(note));
        var act = lines.First(line => line.What is PieceEvent.Poured).ActId;
        return new OwnPour(
            piece,
            act,
            new ObservedPour(
                poured / piece.Surface.Face,
                RunOff.FaceOverRim(piece.Surface),
                hasRunShort ? PourEnd.RanShort : PourEnd.Enough),
            volumes.Caught is { } caught && caught < poured
                ? caught.Millilitres / (poured.Millilitres - caught.Millilitres)
                : null);
    }

    private static Technique WithRunOff(Technique technique, List<OwnPour> pours)
    {
        List<(Surface, double)> caught =
            [.. pours.Where(one => one.RunOff is not null).Select(one => (one.Piece.Surface, one.RunOff!.Value))];
        return caught.Count == 0
            ? technique
            : technique with { RunOff = RunOffEstimate.From(technique.RunOff, caught) };
    }

    private static Length FaceOverRim(SurfaceSet surfaces) => surfaces.Faces
        / surfaces.Groups.Aggregate(default(Length), (rim, group) => rim + group.Surface.Rim * group.Count);

    [GeneratedRegex(
        @"\b(ran|came up|was|too) short\b|\bran out\b|\b(not enough|too little) paint\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex RanShort();

    private sealed record OwnPour(Piece Piece, long Act, ObservedPour Pour, double? RunOff);
}
