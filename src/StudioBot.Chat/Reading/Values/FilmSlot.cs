using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>The film on the face: <c>3mm</c>, <c>film 1.4mm</c>.</summary>
/// <param name="surface">The slot of the surface it lies on, where there is one: a length beside a size is a film.
/// </param>
internal sealed class FilmSlot(SurfaceSlot? surface = null) : Slot<Length>("a film", "3mm")
{
    private const double ThinnestMillimetres = 0.05;
    private const double ThickestMillimetres = 20;

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Length];

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = draft.Atoms[at].IsWord("film") ? 1 : 0;
        if (draft.At(at + lead) is not { } atom || !atom.Measures(Measure.Length) || draft.Said.Has(this))
        {
            return 0;
        }

        var next = draft.At(at + lead + 1);
        if (next is not null && next.IsWord("deep", "depth", "sides", "edge", "edges"))
        {
            return 0;
        }

        var tail = next is not null && next.IsWord("thick", "film", "layer") ? 1 : 0;
        var millimetres = atom.Value * 10;
        var isThin = atom.Unit!.Name == "mm" && millimetres <= ThickestMillimetres;
        var isBesideSize = HasSize(draft) && (next is null || !SurfaceWords.IsNoun(next.Lower));
        if (lead + tail == 0 && !isThin && !isBesideSize)
        {
            return 0;
        }

        if (millimetres is < ThinnestMillimetres or > ThickestMillimetres)
        {
            draft.Slip(at + lead, 1, "is no film: from 0.05 to 20 mm");
        }
        else
        {
            draft.Said.Put(this, Length.FromMillimetres(millimetres));
        }

        return lead + 1 + tail;
    }

    // Of one piece: behind a count the length is the next group's size.
    private bool HasSize(PhraseDraft draft) =>
        surface is not null && draft.Of<SurfaceDraft>(surface).Now is { Sizes.Count: > 0, Count: null or 1 };

    internal override IEnumerable<Meaning> Means(Length value) => [new("film_mm", Figures.Of(value.Millimetres))];

    internal override string Say(Length value) => $"film {Figures.Of(value.Millimetres)}mm";
}
