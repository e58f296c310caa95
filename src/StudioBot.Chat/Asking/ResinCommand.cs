using StudioBot.Chat.Coats;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Surfaces;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary><c>resin 30cm round 3mm 2:1</c>: resin for a surface or pieces.</summary>
internal sealed class ResinCommand : Ask
{
    private static readonly SurfaceSlot Size = new();
    private static readonly FilmSlot Film = new(Size);
    private static readonly RatioSlot Ratio = new();
    private static readonly CountSlot Coats = new(
        "coats", "a number of coats", ["coats", "coat", "layers", "layer"], 20);
    private static readonly AirSlot Air = new();
    private static readonly PiecesSlot Pieces = new() { Most = 20, Unless = Size };
    private static readonly AmountSlot Total = new("an amount of resin", "300 g")
    {
        NoSpoons = "can't be measured well enough for resin: weigh it or use a graduated cup",
    };
    private static readonly ChoiceSlot Detail = new("", "a detail", ["grounds", "cups", "gels"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "resin", Room.Asking, "Resin for a surface or pieces.",
        [Coats, Film, Size, Ratio, Air, Total, Pieces, Detail],
        ["resin 30cm round 3mm 2:1", "resin 17 18 2mm", "resin 300 g 100:45 by weight"])
    {
        More = "A and B by volume and by mass, cups as scale readings, how long it flows in this room, whether "
            + "the air suits.",
        Cues =
        [
            new("how much resin/epoxy {size}"),
            new("resin/epoxy need/needs/needed {size}"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said)
    {
        if (said.Has(Film) && CoatAmounts.IsCast(said.Of(Film)))
        {
            return new Misread(
                $"{Show.Number(said.Of(Film).Millimetres, 2)}mm",
                "is a cast, not a coat: over 10 mm it heats up",
                Sheet.Examples[0]);
        }

        if (said.Has(Ratio) && said.Of(Ratio).Parts.Count != 2)
        {
            return new Misread(
                said.Of(Ratio).ToString(), "has more than two parts: a resin is A and B", Sheet.Examples[0]);
        }

        return said.Has(Size) || said.Has(Pieces) || said.Has(Total)
            ? null
            : new Misread("", "what to coat is missing: a size, a piece or an amount", Sheet.Examples[0]);
    }

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var pieces = said.Has(Pieces) ? said.Of(Pieces).Select(studio.View.Pieces.Find).OfType<Piece>().ToList() : [];
        var job = Job(said, turn, studio, pieces);
        return said.Or(Detail, "") switch
        {
            "cups" => ResinPages.Cups(job, studio, Without(said, " cups")),
            "gels" => ResinPages.Gels(job, Without(said, " gels")),
            "grounds" => ResinPages.Grounds(job, studio, Without(said, " grounds")),
            _ => ResinPages.Amounts(job, pieces, studio, said.Line),
        };
    }

    private static ResinJob Job(Phrase said, Turn turn, Studio studio, IReadOnlyList<Piece> pieces)
    {
        var (system, resin, from) = ResinJob.Resins(said.Has(Ratio) ? said.Of(Ratio) : null, studio);
        var (film, coats) = (said.Or(Film, system.FloodFilm.Value.Usual), said.Or(Coats, 1));
        List<SurfaceSet> sets = [.. ResinNeed.Of(pieces)];
        if (said.Has(Size))
        {
            sets.Add(said.Of(Size));
        }

        List<string> taken = said.Has(Ratio) ? [] : [ResinJob.Words(resin.Ratio)];
        if (sets.Count > 0 && !said.Has(Film))
        {
            taken.Add("film");
        }

        var words = said.Has(Air) ? said.Of(Air) : null;
        var need = sets.Count == 0
            ? ResinNeed.Said(resin, said.Of(Total))
            : ResinNeed.For(sets, What(said, pieces), film, coats, resin, system);
        var gels = StudioGels.Of(studio);
        return new ResinJob(
            system,
            resin,
            from,
            need,
            sets.Count == 0 ? 1 : coats,
            sets.Count == 0 ? null : film,
            AirTaken.Of(words, turn, studio),
            words,
            taken)
        {
            Gel = gels.Pace(system),
            GelSlips = gels.Slips(system),
        };
    }

    private static string What(Phrase said, IReadOnlyList<Piece> pieces)
    {
        List<string> what = [];
        if (pieces.Count > 0)
        {
            what.Add($"Piece{(pieces.Count > 1 ? "s" : "")} {string.Join(", ", pieces.Select(piece => piece.Number))}");
        }

        if (said.Has(Size))
        {
            what.Add(Show.Surfaces(said.Of(Size)));
        }

        return string.Join(" + ", what);
    }

    private static string Without(Phrase said, string detail) =>
        said.Line.Replace(detail, "", StringComparison.Ordinal);
}
