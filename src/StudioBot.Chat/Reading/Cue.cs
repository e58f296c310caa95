namespace StudioBot.Chat.Reading;

/// <summary>Words by which a sentence means a command without naming it.</summary>
/// <param name="words">All of these must occur, in any order; a slash parts words of which one must.</param>
public sealed class Cue(string words)
{
    private readonly string[][] _needed =
        [.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word[0] != '{').Select(word => word.Split('/'))];

    private readonly string[] _things =
        [.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word[0] == '{').Select(word => word.Trim('{', '}'))];

    /// <summary>How much more it says than its words count: people and a size are a workshop, whatever else is there.</summary>
    public int Weight { get; init; }

    /// <summary>Whether the sentence asks or tells; a telling one is agreed to first.</summary>
    public bool IsPlain { get; init; }

    /// <summary>How many words and things of the sentence fit; 0 where one is lacking.</summary>
    internal int Score(IReadOnlyList<Atom> atoms, Vocabulary vocabulary)
    {
        foreach (var choice in _needed)
        {
            if (!atoms.Any(atom => atom.Kind is AtomKind.Word or AtomKind.Name && Says(atom, choice)))
            {
                return 0;
            }
        }

        return _things.All(thing => atoms.Any(atom => Is(atom, thing, vocabulary))) ? 2 * _needed.Length + _things.Length + Weight : 0;
    }

    private static bool Says(Atom atom, string[] choice) =>
        choice.Contains(atom.Lower) || (atom.Kind == AtomKind.Name && atom.Lower.Split(' ').Any(choice.Contains));

    private static bool Is(Atom atom, string thing, Vocabulary vocabulary) => thing switch
    {
        "lot" => atom.Kind == AtomKind.Word && vocabulary.Lot(atom.Lower) is not null,
        "size" => atom.Kind == AtomKind.Sizes || atom.Measures(Measure.Length)
            || (atom.Kind == AtomKind.Word && (Values.SurfaceWords.Sheet(atom.Lower) is not null || atom.Lower is "coaster" or "coasters")),
        "amount" => atom.Kind == AtomKind.Quantity && atom.Unit!.Measure is Measure.Volume or Measure.Mass or Measure.Ounce,
        "number" => atom.IsNumber,
        "temperature" => atom.Kind == AtomKind.Quantity && atom.Unit!.Measure is Measure.Temperature or Measure.Degrees,
        "humidity" => atom.Measures(Measure.Percent),
        "time" => atom.Measures(Measure.Time),
        "money" => atom.Measures(Measure.Money),
        "material" => atom.NameOf(NameKind.Material) is not null,
        "recipe" => atom.NameOf(NameKind.Recipe) is not null,
        "member" => atom.NameOf(NameKind.Member) is not null,
        "cup" => atom.Kind == AtomKind.Word && atom.Lower.Length > 3 && (atom.Lower.StartsWith("ford", StringComparison.Ordinal)
            || atom.Lower.StartsWith("zahn", StringComparison.Ordinal) || atom.Lower.StartsWith("iso", StringComparison.Ordinal)),
        _ => false,
    };
}
