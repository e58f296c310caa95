namespace StudioBot.Chat.Reading.Values;

/// <summary>A name with a size in it: <c>tiles 10cm</c>.</summary>
internal static class SizedName
{
    /// <summary>The material of this name, of two atoms; none where no such name stands there.</summary>
    public static string? At(PhraseDraft draft, int at)
    {
        if (draft.At(at) is not { Kind: AtomKind.Word } noun
            || draft.At(at + 1) is not { Kind: AtomKind.Quantity } size)
        {
            return null;
        }

        var glued = size.Lower.Replace(" ", "", StringComparison.Ordinal);
        return draft.Vocabulary.Match([noun.Lower, glued]) is { Words: 2, Names: var names }
            ? names.FirstOrDefault(name => name.Kind == NameKind.Material)?.Name
            : null;
    }
}
