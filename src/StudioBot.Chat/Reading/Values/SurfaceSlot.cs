using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>
/// What is to be covered: <c>30cm panel</c>, <c>six 4in tiles</c>, <c>2 tiles 10cm + 1 panel 40cm</c>, <c>A4</c>.
/// </summary>
internal sealed class SurfaceSlot() : Slot<SurfaceSet>("a size", "30cm panel")
{
    // More pieces nobody pours at once.
    private const int Most = 1000;

    internal override IEnumerable<string> Lexicon => SurfaceWords.All;

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Length];

    internal override int Take(PhraseDraft draft, int at)
    {
        var surface = draft.Of<SurfaceDraft>(this);
        var atom = draft.Atoms[at];
        return atom.Kind switch
        {
            AtomKind.Sizes => TakeSizes(draft, surface, at, atom.Parts),
            AtomKind.Quantity when atom.Measures(Measure.Length) => TakeLength(draft, surface, at),
            AtomKind.Word when SurfaceWords.Sheet(atom.Lower) is { } sheet =>
                TakeSizes(draft, surface, at, [sheet.Width, sheet.Height]),
            AtomKind.Word => TakeWord(draft, surface, at),
            AtomKind.Number => TakeNumber(draft, surface, at),
            AtomKind.Mark when atom.Lower is "+" or "&" && surface.Now.IsComplete => TakePlus(surface),
            _ => 0,
        };
    }

    internal override void Finish(PhraseDraft draft)
    {
        var surface = draft.Of<SurfaceDraft>(this);
        if (!surface.Now.IsEmpty)
        {
            surface.Next();
        }

        if (surface.Groups.Count > 0 && SurfaceBuild.From(draft, surface, this) is { } set)
        {
            draft.Said.Put(this, set);
        }
    }

    internal override IEnumerable<Meaning> Means(SurfaceSet value) => SurfaceMeaning.Of(value);

    internal override string Say(SurfaceSet value) => Words(value);

    /// <summary>The surfaces as one would type them.</summary>
    public static string Words(SurfaceSet value)
    {
        var groups = value.Groups.Select(group => (group.Count > 1 ? $"{group.Count} x " : "") + Words(group.Surface));
        var depth = value.Depth is { } deep ? $" {Figures.Typed(deep)} deep" : "";
        return string.Join(" + ", groups) + depth;
    }

    private static string Words(Surface surface) => surface switch
    {
        Surface.Panel { IsSquare: true } square => $"{Figures.Typed(square.Width)} panel",
        Surface.Panel panel => $"{Figures.Of(panel.Width.Centimetres)}x{Figures.Of(panel.Height.Centimetres)}cm panel",
        Surface.Disc disc => $"{Figures.Typed(disc.Diameter)} round",
        Surface.Oval oval => $"{Figures.Of(oval.Width.Centimetres)}x{Figures.Of(oval.Height.Centimetres)}cm oval",
        Surface.Hexagon hexagon => $"{Figures.Typed(hexagon.AcrossFlats)} hexagon",
        _ => "",
    };

    private static int TakeSizes(PhraseDraft draft, SurfaceDraft surface, int at, IReadOnlyList<double> sizes)
    {
        if (surface.Now.Sizes.Count > 0)
        {
            if (surface.Now.Count is null)
            {
                return 0;
            }

            surface.Next();
        }

        (surface.Now.Sizes, surface.Now.SizeAt) = (sizes, at);
        var next = draft.At(at + 1);
        if (next is not null && next.IsWord("deep", "depth"))
        {
            return 0;
        }

        return 1;
    }

    private static int TakeLength(PhraseDraft draft, SurfaceDraft surface, int at)
    {
        var atom = draft.Atoms[at];
        if (draft.At(at + 1) is { } next && next.IsWord("deep", "depth", "sides", "edge", "edges"))
        {
            surface.Depth = (atom.Value, at);
            return 2;
        }

        if (draft.At(at - 1) is not null && draft.Atoms[at - 1].IsWord("deep", "depth"))
        {
            surface.Depth = (atom.Value, at);
            return 1;
        }

        return TakeSizes(draft, surface, at, [atom.Value]);
    }

    private static int TakeWord(PhraseDraft draft, SurfaceDraft surface, int at)
    {
        var atom = draft.Atoms[at];
        if (atom.Lower is "corners" && surface.Now.Sizes.Count > 0)
        {
            surface.Now.AcrossCorners = true;
            return 1;
        }

        if (IsSetOf(draft, at) && TakeNumber(draft, surface, at + 2) > 0)
        {
            return 3;
        }

        if (!SurfaceWords.All.Contains(atom.Lower))
        {
            return 0;
        }

        StartNext(surface, atom.Lower);
        if (SurfaceWords.Shape(atom.Lower) is { } shape)
        {
            return TakeShape(draft, surface, at, shape);
        }

        surface.Now.Noun = atom.Lower;
        return 1 + CountBehind(draft, surface, at + 1);
    }

    private static int TakeShape(PhraseDraft draft, SurfaceDraft surface, int at, string shape)
    {
        if (surface.Now.Shape is { } before && !Agree(before, shape))
        {
            var first = surface.Now.ShapeAt;
            draft.Slip(first, at - first + 1, "says two shapes at once");
            return 1;
        }

        (surface.Now.Shape, surface.Now.ShapeAt) = (shape, at);
        surface.Now.IsCoaster |= IsCoaster(draft.Atoms[at].Lower);
        return 1 + CountBehind(draft, surface, at + 1);
    }

    private static bool IsCoaster(string word) => word.StartsWith("coaster", StringComparison.Ordinal);

    private static bool IsSetOf(PhraseDraft draft, int at) => draft.Atoms[at].IsWord("set")
        && draft.At(at + 1)?.IsWord("of") == true
        && draft.At(at + 2) is { IsNumber: true };

    // Every square is a rectangle.
    private static bool Agree(string first, string second) =>
        first == second || (first is "rect" or "square" && second is "rect" or "square");

    // 2 tiles 10cm and a 40cm panel: a second noun behind a complete group begins the next.
    private static void StartNext(SurfaceDraft surface, string word)
    {
        var isThing = SurfaceWords.IsNoun(word) || IsCoaster(word);
        if (isThing && surface.Now is { IsComplete: true, Noun: not null, Count: not null })
        {
            surface.Next();
        }
    }

    // 10cm tiles x 12.
    private static int CountBehind(PhraseDraft draft, SurfaceDraft surface, int at)
    {
        if (surface.Now.Count is null
            && draft.At(at) is { } times && SizeJoiner.IsTimes(times)
            && draft.At(at + 1) is { IsNumber: true, IsWhole: true, Value: >= 1 and <= Most } count
            && Flaws.In(draft, at + 1) is null)
        {
            surface.Now.Count = (int)count.Value;
            return 2;
        }

        return 0;
    }

    private static int TakePlus(SurfaceDraft surface)
    {
        surface.Next();
        return 1;
    }

    // A count before a size or a noun; or, before a single noun, a size whose unit is left out.
    private static int TakeNumber(PhraseDraft draft, SurfaceDraft surface, int at)
    {
        var behind = at + (draft.At(at + 1) is { } times && SizeJoiner.IsTimes(times) ? 2 : 1);
        if (draft.At(behind) is not { } next || draft.Atoms[at].IsHashed)
        {
            return 0;
        }

        var isBeforeNoun = next.Kind == AtomKind.Word && SurfaceWords.All.Contains(next.Lower);
        if (!isBeforeNoun && (!IsSize(next) || IsThin(next)))
        {
            return 0;
        }

        if (isBeforeNoun && surface.Now.Sizes.Count == 0 && IsUnitLeftOut(draft, at, behind))
        {
            return TakeBareSize(draft, surface, at);
        }

        if (WrongCount(draft.Atoms[at]) is { } why)
        {
            var count = draft.Atoms[at].Value < 1 && isBeforeNoun ? behind - at + 1 : 1;
            draft.Slip(at, count, why);
            return behind - at;
        }

        if (surface.Now is { IsComplete: true, Count: not null } or { IsComplete: true, Noun: not null })
        {
            surface.Next();
        }

        surface.Now.Count = (int)draft.Atoms[at].Value;
        return behind - at;
    }

    // 30 round, 30 panel; but "2 tiles" and "1 panel 40cm" count.
    private static bool IsUnitLeftOut(PhraseDraft draft, int at, int noun) =>
        draft.Atoms[at].Value > 1
        && !SurfaceWords.IsPlural(draft.Atoms[noun].Lower)
        && !(draft.At(noun + 1) is { } next && IsSize(next));

    private static int TakeBareSize(PhraseDraft draft, SurfaceDraft surface, int at)
    {
        var number = draft.Atoms[at];
        var (unit, centimetres) = draft.Context.Who.Units == UnitSystem.Us ? ("inches", 2.54) : ("cm", 1);
        draft.Said.NoteList.Add($"{number.Lower} taken as {unit}");
        return TakeSizes(draft, surface, at, [number.Value * centimetres]);
    }

    private static string? WrongCount(Atom number) => number switch
    {
        { Value: < 1 } => "is too few: at least one",
        { IsWhole: false } => "is no whole number",
        { Value: > Most } => "is more than a studio pours",
        _ => null,
    };

    // 17 2mm: no surface is that small, so it is a film, and the number before it a piece.
    private static bool IsThin(Atom atom) => atom.Measures(Measure.Length) && atom.Value < 1;

    private static bool IsSize(Atom atom) => atom.Kind == AtomKind.Sizes || atom.Measures(Measure.Length);
}
