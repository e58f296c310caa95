namespace StudioBot.Chat.Reading.Values;

/// <summary>The colours of a pour: <c>6 colours</c>, or <c>white, lamp black, gold mica</c>.</summary>
internal sealed class ColoursSlot() : Slot<Colours>("a number of colours", "6 colours")
{
    private const int Most = 40;

    internal override IEnumerable<string> Lexicon => ["colours", "colors"];

    internal override IReadOnlyCollection<NameKind> NameKinds => [NameKind.Material];

    internal override int Take(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        var colours = draft.Of<Draft>(this);
        if (atom.NameOf(NameKind.Material) is { } name && draft.Context.IsColour(name.Name))
        {
            colours.Names.Add(name.Name);
            return 1;
        }

        if (Partly(draft, at) is { } whole)
        {
            colours.Names.Add(whole);
            return 1;
        }

        if (!atom.IsNumber || draft.At(at + 1) is not { } noun || !IsNoun(noun.Lower))
        {
            return 0;
        }

        if (atom.Value < 1 || !atom.IsWhole || atom.Value > Most)
        {
            draft.Slip(at, 2, atom.Value < 1 ? "is too few: at least one" : "is no number of colours");
        }
        else
        {
            colours.Count = (int)atom.Value;
        }

        return draft.At(at + 2) is { } dot && dot.IsMark(".") ? 3 : 2;
    }

    internal override void Finish(PhraseDraft draft)
    {
        var colours = draft.Of<Draft>(this);
        if (colours.Count > 0 || colours.Names.Count > 0)
        {
            draft.Said.Put(this, new Colours(Math.Max(colours.Count, colours.Names.Count), colours.Names));
        }
    }

    internal override IEnumerable<Meaning> Means(Colours value)
    {
        yield return new("colours", Figures.Of(value.Count));
        if (value.Names.Count > 0)
        {
            yield return new("colour_names", string.Join('|', value.Names));
        }
    }

    internal override string Say(Colours value) =>
        value.Names.Count > 0 ? string.Join(", ", value.Names) : $"{value.Count} colours";

    // Gold, where gold mica is the only gold: said in an answer, agreed to in a record.
    private static string? Partly(PhraseDraft draft, int at)
    {
        var word = draft.Atoms[at];
        if (word.Kind != AtomKind.Word || Fillers.Holds(word.Lower) || word.Lower.Length < 3)
        {
            return null;
        }

        var fitting = draft.Vocabulary.Holding(NameKind.Material, word.Lower).Where(draft.Context.IsColour).ToList();
        if (fitting.Count != 1)
        {
            return null;
        }

        draft.Said.NoteList.Add($"“{word.Lower}” taken as {fitting[0]}");
        if (draft.Form.Records)
        {
            draft.Doubt(at, 1, $"is read as {fitting[0]}");
        }

        return fitting[0];
    }

    private static bool IsNoun(string word) =>
        word is "colours" or "colour" or "colors" or "color" or "cols" or "col" or "clrs" or "paints" or "shades";

    private sealed class Draft
    {
        public int Count { get; set; }

        public List<string> Names { get; } = [];
    }
}
