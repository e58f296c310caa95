using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Surfaces;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary><c>again 17 on 40cm round</c>: the recipe of a piece at a new size.</summary>
internal sealed class AgainCommand : Ask
{
    private const int MostParts = 6;

    private static readonly PiecesSlot Number = new() { IsRequired = true };
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string>
    {
        ["parts"] = "parts",
    });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "again", Room.Asking, "The recipe of a piece at a new size.",
        [Number, Size, Detail],
        ["again 17 on 40cm round"])
    {
        More = "By your own pours, as amounts.",
        Also = ["repeat", "redo"],
        Cues =
        [
            new("same {number} {size}"),
            new("like {number} {size}"),
            new("again {number} {size}"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var piece = studio.View.Pieces.Find(said.Of(Number)[0])
            ?? throw new InvalidOperationException("The reader lets only numbers of pieces pass.");
        var isKnown = studio.Practice.Techniques.Any(one => one.Name == piece.Technique);
        var technique = studio.Technique(isKnown ? piece.Technique : null);
        var colours = piece.Colours ?? studio.Practice.Pours.UsualColours.Value;
        var maker = turn.Member?.Name;
        var then = new SurfaceSet(piece.Surface, depth: piece.Depth);
        var before = studio.Amounts(technique, then, colours, StudioFilms.Of(technique, then, maker, studio));
        var learnt = StudioFilms.Of(technique, said.Of(Size), maker, studio);
        var now = studio.Amounts(technique, said.Of(Size), colours, learnt);
        var rows = piece.Parts.Count > 0
            ? Scaled(piece, now.Need / before.Need, isWhole: said.Has(Detail))
            : Layers(now);
        var total = piece.Parts.Count > 0
            ? piece.Parts
                .Select(part => part.Amount)
                .OfType<Amount.ByVolume>()
                .Aggregate(default(Craft.Units.Volume), (sum, part) => sum + part.Volume) * (now.Need / before.Need)
            : now.TotalMixed;
        List<Block> blocks =
        [
            new Block.Headline($"{piece.Number} again: mix {Show.ToMeasure(total)}"),
            new Block.Figures(rows),
            new Block.Line($"{Show.Surfaces(said.Of(Size))}, {Show.Number(now.Need / before.Need, 2)} times as much as "
                + $"{piece.Number} {Origin(piece, technique, learnt, studio)}"),
        ];
        if (piece.Parts.Any(part => part.Amount is Amount.ByMass))
        {
            blocks.Add(Cautions.InShort(studio, SafetySubject.Powder));
        }

        if (said.Has(Detail))
        {
            return new Reply(blocks[..2]);
        }

        List<Button> buttons =
        [
            new Button("By layers", $"amounts {SurfaceSlot.Words(said.Of(Size))} {technique.Name} {colours} colours"),
            new Button("Price of it", $"quote {SurfaceSlot.Words(said.Of(Size))} {technique.Name} {colours} colours"),
        ];
        if (piece.Parts.Count > MostParts)
        {
            buttons.Insert(0, new Button("All parts", $"{said.Line} parts"));
        }

        return new Reply(blocks, buttons);
    }

    private static List<Figure> Scaled(Piece piece, double times, bool isWhole)
    {
        var shown = isWhole || piece.Parts.Count <= MostParts ? piece.Parts.Count : MostParts - 1;
        List<Figure> rows = [.. piece.Parts.Take(shown).Select(part => new Figure(part.Material, part.Amount switch
        {
            Amount.ByVolume volume => Show.ToMeasure(volume.Volume * times),
            Amount.ByMass mass => (mass.Mass * times).Grams < 0.1 ? "under 0.1 g" : Show.Mass(mass.Mass * times),
            _ => "",
        }))];
        if (piece.Parts.Count > shown)
        {
            rows.Add(new Figure($"and {piece.Parts.Count - shown} more", ""));
        }

        return rows;
    }

    private static List<Figure> Layers(PourAmounts amounts)
    {
        List<Figure> rows = [new(
            amounts.Colours == 1 ? "1 colour" : $"{amounts.Colours} colours, each",
            Show.ToMeasure(amounts.PerColour))];
        if (amounts.Base.Millilitres > 0)
        {
            rows.Insert(0, new Figure("Base coat", Show.ToMeasure(amounts.Base)));
        }

        if (amounts.Activator.Millilitres > 0)
        {
            rows.Add(new Figure("Cell activator", Show.ToMeasure(amounts.Activator)));
        }

        return rows;
    }

    private static string Origin(Piece piece, Technique technique, LearntNeed? learnt, Studio studio)
    {
        var recipe = piece.Recipe is { } name ? name + ", " : "";
        var record = piece.Parts.Count == 0
            ? $" Its colours are not on record: by layers, {learnt?.Pours ?? "common practice"}."
            : learnt is null ? "" : $" By {learnt.Pours}.";
        return $"({recipe}{technique.Name}, {Words(piece.Stage)}).{record}{Sentences.Invented(studio)}";
    }

    private static string Words(Stage stage) => stage switch
    {
        Stage.Drying => "still drying",
        Stage.Ready => "dry, not coated",
        Stage.Coated => "coated, still curing",
        Stage.Cured => "cured",
        Stage.Kept => "kept",
        Stage.Sold => "sold",
        _ => "thrown away",
    };
}
