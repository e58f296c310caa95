namespace StudioBot.Chat.Reading.Values;

/// <summary>A time of day: <c>9:00</c>, <c>10am</c>, <c>6:30 pm</c>; <c>18h</c> is a duration and none.</summary>
internal static class ClockWords
{
    /// <summary>The time after midnight that begins here and its atoms; none where none does.</summary>
    public static (TimeSpan Time, int Taken)? At(PhraseDraft draft, int at)
    {
        if (draft.At(at) is not { } atom)
        {
            return null;
        }

        if (atom.Measures(Measure.Clock) && atom.Typed is >= 1 and <= 12)
        {
            return (TimeSpan.FromHours(InDay(atom.Typed, atom.Unit!.Name)), 1);
        }

        if (atom is not { Kind: AtomKind.Ratio, Parts: [>= 0 and < 24, >= 0 and < 60] })
        {
            return null;
        }

        if (draft.At(at + 1) is { Kind: AtomKind.Word } half && half.IsWord("am", "pm"))
        {
            return (Time(InDay(atom.Parts[0], half.Lower), atom.Parts[1]), 2);
        }

        return HasTwoDigits(atom) ? (Time(atom.Parts[0], atom.Parts[1]), 1) : null;
    }

    private static double InDay(double hours, string half) => hours % 12 + (half == "pm" ? 12 : 0);

    private static TimeSpan Time(double hours, double minutes) => new((int)hours, (int)minutes, 0);

    // 9:00 is a time of day and 2:1 is none.
    private static bool HasTwoDigits(Atom atom) => atom.Lower.Length > 3 && atom.Lower[^3] == ':';
}
