using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Weighings of pieces: <c>17 318.4 g</c>, <c>17 318.4g 18 402.1g</c>.</summary>
internal sealed class WeighingsSlot() : Slot<IReadOnlyList<(int Piece, Mass Mass)>>("a weight", "17 318.4 g")
{
    // More than this no piece weighs.
    private const double MostGrams = 100_000;

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Mass];

    internal override int Take(PhraseDraft draft, int at)
    {
        var list = draft.Of<Draft>(this);
        var atom = draft.Atoms[at];
        if (atom.Kind == AtomKind.Quantity && atom.Unit!.Measure is Measure.Mass or Measure.Ounce)
        {
            return Weigh(draft, list, at, atom.Value);
        }

        if (!atom.IsNumber)
        {
            return 0;
        }

        if (list.Piece is not null && !atom.IsHashed)
        {
            return Weigh(draft, list, at, atom.Value);
        }

        if (PiecesSlot.Wrong(draft, atom) is { } why)
        {
            draft.Slip(at, 1, why);
        }
        else
        {
            list.Piece = (int)atom.Value;
        }

        return 1;
    }

    internal override void Finish(PhraseDraft draft)
    {
        var list = draft.Of<Draft>(this);
        if (draft.Slips.Count > 0)
        {
            return;
        }

        if (list.LacksPiece)
        {
            draft.Missing("the piece is missing");
        }
        else if (list.Piece is not null)
        {
            draft.Missing("the weight is missing");
        }
        else if (list.Weighings.Count > 0)
        {
            draft.Said.Put(this, list.Weighings);
        }
    }

    internal override IEnumerable<Meaning> Means(IReadOnlyList<(int Piece, Mass Mass)> value)
    {
        if (value is [var only])
        {
            return [new("piece", Figures.Of(only.Piece)), new("mass_g", Figures.Of(only.Mass.Grams))];
        }

        var items = value.Select(weighing => $"{weighing.Piece}:{Figures.Of(weighing.Mass.Grams)}g");
        return [new("items", string.Join('|', items))];
    }

    internal override string Say(IReadOnlyList<(int Piece, Mass Mass)> value) =>
        string.Join(' ', value.Select(weighing => $"{weighing.Piece} {Figures.Of(weighing.Mass.Grams)} g"));

    private static int Weigh(PhraseDraft draft, Draft list, int at, double grams)
    {
        if (grams is <= 0 or > MostGrams)
        {
            draft.Slip(at, 1, grams <= 0 ? "is no weight: above zero" : "is more than a piece weighs");
            list.Piece = null;
        }
        else if (list.Piece is { } piece)
        {
            list.Weighings.Add((piece, Mass.FromGrams(grams)));
            list.Piece = null;
        }
        else
        {
            list.LacksPiece = true;
        }

        return 1;
    }

    private sealed class Draft
    {
        public List<(int Piece, Mass Mass)> Weighings { get; } = [];

        public int? Piece { get; set; }

        public bool LacksPiece { get; set; }
    }
}
