namespace StudioBot.Chat.Reading;

/// <summary>Which words and kinds of things stand in a message, gathered once for all cues.</summary>
internal sealed class Sightings
{
    private readonly HashSet<string> _words = [];
    private readonly HashSet<string> _things = [];

    public Sightings(IReadOnlyList<Atom> atoms, Vocabulary vocabulary)
    {
        foreach (var atom in atoms)
        {
            if (atom.Kind is AtomKind.Word or AtomKind.Name)
            {
                _words.Add(atom.Lower);
                _words.UnionWith(atom.Kind == AtomKind.Name ? atom.Lower.Split(' ') : []);
            }

            See(atom, vocabulary);
        }
    }

    /// <summary>Whether this word stands there.</summary>
    public bool HasWord(string word) => _words.Contains(word);

    /// <summary>Whether a thing of this kind stands there: size, amount, number, temperature, lot …</summary>
    public bool HasThing(string thing) => _things.Contains(thing);

    private void See(Atom atom, Vocabulary vocabulary)
    {
        switch (atom.Kind)
        {
            case AtomKind.Number:
                _things.Add("number");
                break;
            case AtomKind.Ratio:
                _things.Add("ratio");
                break;
            case AtomKind.Sizes:
                _things.Add("size");
                break;
            case AtomKind.Quantity:
                _things.Add(Thing(atom.Unit!.Measure));
                break;
            case AtomKind.Name:
                _things.UnionWith(atom.Names.Select(name => Thing(name.Kind)));
                break;
            case AtomKind.Word:
                SeeWord(atom.Lower, vocabulary);
                break;
        }
    }

    private void SeeWord(string word, Vocabulary vocabulary)
    {
        if (word is "coaster" or "coasters" || Values.SurfaceWords.Sheet(word) is not null)
        {
            _things.Add("size");
        }
        else if (Values.CupSlot.IsCup(word))
        {
            _things.Add("cup");
        }
        else if (vocabulary.Lot(word) is not null)
        {
            _things.Add("lot");
        }
    }

    private static string Thing(NameKind kind) => kind switch
    {
        NameKind.Material => "material",
        NameKind.Recipe => "recipe",
        NameKind.Member => "member",
        _ => "name",
    };

    private static string Thing(Measure measure) => measure switch
    {
        Measure.Length => "size",
        Measure.Volume or Measure.Mass or Measure.Ounce => "amount",
        Measure.Temperature or Measure.Degrees => "temperature",
        Measure.Percent => "humidity",
        Measure.Time => "time",
        Measure.Money => "money",
        _ => "figure",
    };
}
