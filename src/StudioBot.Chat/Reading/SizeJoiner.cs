namespace StudioBot.Chat.Reading;

/// <summary>
/// Joins what stands around an x: two lengths to one rectangle. A count before a complete size (6 x 10cm tile,
/// 2x30cm panels) and a count of packs (2 x 1 L) stay apart.
/// </summary>
internal static class SizeJoiner
{
    private static readonly HashSet<string> Plurals =
        [.. "panels tiles rounds squares discs coasters canvases boards ovals hexagons pieces".Split(' ')];

    /// <summary>The atoms with rectangles joined.</summary>
    public static List<Atom> Join(List<Atom> atoms)
    {
        for (var i = 0; i + 2 < atoms.Count; i++)
        {
            if (IsLength(atoms[i]) && IsTimes(atoms[i + 1]) && IsLength(atoms[i + 2]) && !IsCount(atoms, i))
            {
                atoms[i] = Both(atoms[i], atoms[i + 2]);
                atoms.RemoveRange(i + 1, 2);
            }
        }

        return atoms;
    }

    /// <summary>An x or a by.</summary>
    public static bool IsTimes(Atom atom) => atom.IsMark("x") || atom.IsWord("x", "by", "times");

    private static bool IsLength(Atom atom) =>
        (atom.IsNumber && !atom.IsHashed) || atom.Measures(Measure.Length);

    private static bool IsCount(List<Atom> atoms, int at)
    {
        var (first, second) = (atoms[at], atoms[at + 2]);
        if (!first.IsNumber || !first.IsWhole || first.Value is < 1 or > 500 || first.Flaw != NumberFlaw.None)
        {
            return false;
        }

        var isPlural = atoms.Skip(at + 3).Take(2)
            .Any(atom => atom.Kind == AtomKind.Word && Plurals.Contains(atom.Lower));
        if (second.IsNumber)
        {
            return first.Value < 5 && isPlural;
        }

        // 6 x 10cm: the blanks around the x part what those within 10cm do not.
        var isSpaced = first.Value <= 12
            && !atoms[at + 1].Glued
            && !second.Glued
            && second.Unit!.Name is "cm" or "mm"
            && !second.Lower.Contains(' ', StringComparison.Ordinal);
        return (isPlural && first.Value <= second.Typed) || isSpaced;
    }

    private static Atom Both(Atom first, Atom second)
    {
        var unit = second.Unit ?? first.Unit;
        double Centimetres(Atom atom) => atom.Unit is not null ? atom.Value : atom.Typed * (unit?.Factor ?? 1);
        var flaw = first.Flaw != NumberFlaw.None ? first.Flaw : second.Flaw;
        return new Atom(AtomKind.Sizes, first.Start, second.End, first.Lower + "x" + second.Lower)
        {
            Parts = [Centimetres(first), Centimetres(second)],
            Unit = unit,
            Flaw = flaw,
            Glued = first.Glued,
            Value = Math.Min(first.Value, second.Value),
        };
    }
}
