namespace StudioBot.Chat.Reading;

/// <summary>What is wrong with a number wherever it stands.</summary>
internal static class Flaws
{
    /// <summary>Why this atom can't be used; none where it can.</summary>
    public static string? In(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        if (atom.Kind is AtomKind.Word or AtomKind.Name or AtomKind.Mark or AtomKind.NewLine)
        {
            return null;
        }

        return atom.Flaw switch
        {
            NumberFlaw.NotANumber when atom.Kind == AtomKind.Ratio => IsSplitWrongly(atom)
                ? "is not a ratio: parts are split by a colon"
                : "is not a ratio: each part is a number",
            NumberFlaw.NotANumber => "is not a number",
            NumberFlaw.ForeignDigits => "has digits of another script: 0-9 are read here",
            NumberFlaw.Invisible => "has a character in it that can't be seen: type it again",
            NumberFlaw.Absurd => "is too large to be meant",
            _ when IsNegative(atom) => "can't be negative",
            _ => null,
        };
    }

    private static bool IsSplitWrongly(Atom ratio) => ratio.Lower.Contains(';', StringComparison.Ordinal);

    private static bool IsNegative(Atom atom) => atom.Kind is AtomKind.Ratio or AtomKind.Fraction or AtomKind.Sizes
        ? atom.Parts.Any(part => part < 0)
        : atom.Typed < 0 && atom.Unit is not { Measure: Measure.Temperature or Measure.Degrees };
}
