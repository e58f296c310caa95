namespace StudioBot.Chat.Reading;

/// <summary>The smallest part of a message that means something by itself.</summary>
internal sealed class Atom(AtomKind kind, int start, int end, string lower)
{
    public AtomKind Kind { get; } = kind;

    public int Start { get; } = start;

    public int End { get; } = end;

    /// <summary>In lower case; of a name, the words as typed.</summary>
    public string Lower { get; } = lower;

    /// <summary>Of a number as typed, of a quantity in its measure's own unit (degrees as typed).</summary>
    public double Value { get; init; }

    /// <summary>The number before the unit.</summary>
    public double Typed { get; init; }

    public Unit? Unit { get; init; }

    public NumberFlaw Flaw { get; init; }

    /// <summary>Of a ratio its parts, of sizes the two lengths in cm, of a fraction its two numbers.</summary>
    public IReadOnlyList<double> Parts { get; init; } = [];

    /// <summary>Of a name, what it can stand for.</summary>
    public IReadOnlyList<Named> Names { get; init; } = [];

    /// <summary>A hash stood before the number.</summary>
    public bool IsHashed { get; init; }

    public bool IsNumber => Kind == AtomKind.Number;

    /// <summary>No blank stands before it.</summary>
    public bool Glued { get; init; }

    public bool IsWord(params ReadOnlySpan<string> words) =>
        Kind is AtomKind.Word or AtomKind.Name && words.Contains(Lower);

    public bool IsMark(string mark) => Kind == AtomKind.Mark && Lower == mark;

    public bool Measures(Measure measure) => Kind == AtomKind.Quantity && Unit!.Measure == measure;

    public bool IsWhole => Value == Math.Floor(Value);

    /// <summary>Whose it is, where it is the first name of several.</summary>
    public IReadOnlyList<string> Members =>
        [.. Names.Where(name => name.Kind == NameKind.Member).Select(name => name.Name)];

    public Named? NameOf(NameKind kind)
    {
        foreach (var name in Names)
        {
            if (name.Kind == kind)
            {
                return name;
            }
        }

        return null;
    }
}
