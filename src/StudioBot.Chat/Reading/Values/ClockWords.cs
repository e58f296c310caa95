using System.Globalization;

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

        if (atom.Measures(Measure.Clock) && atom.Typed is >= 1 and < 13)
        {
            return Halved(draft.Verbatim(at), atom) is { } time ? (time, 1) : null;
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

    /// <summary>The time after midnight that begins here with a dot in place of a colon, <c>14.20</c>; none where none
    /// does: as a figure it would be one with two decimals.</summary>
    public static (TimeSpan Time, int Taken)? Dotted(PhraseDraft draft, int at) =>
        draft.At(at) is { Kind: AtomKind.Number, IsHashed: false } atom && Parted(draft.Verbatim(at)) is { } parts
        && parts.Hours < 24
            ? (Time(parts.Hours, parts.Minutes), 1)
            : null;

    // 2pm, 2.20 pm; 2.5 pm is none.
    private static TimeSpan? Halved(string typed, Atom atom)
    {
        var half = atom.Unit!.Name;
        return atom.Typed == Math.Floor(atom.Typed) ? TimeSpan.FromHours(InDay(atom.Typed, half))
            : Parted(typed.TrimEnd('a', 'm', 'p', 'A', 'M', 'P', ' ')) is { } parts
            ? Time(InDay(parts.Hours, half), parts.Minutes)
            : null;
    }

    // The hours and minutes of 9.20; none where that is a figure like any other.
    private static (int Hours, int Minutes)? Parted(string typed) =>
        typed is [.. var hours, '.', >= '0' and <= '5', >= '0' and <= '9']
        && hours.Length is 1 or 2
        && hours.All(char.IsAsciiDigit)
            ? (int.Parse(hours, CultureInfo.InvariantCulture), int.Parse(typed[^2..], CultureInfo.InvariantCulture))
            : null;

    private static double InDay(double hours, string half) => hours % 12 + (half == "pm" ? 12 : 0);

    private static TimeSpan Time(double hours, double minutes) => new((int)hours, (int)minutes, 0);

    // 9:00 is a time of day and 2:1 is none.
    private static bool HasTwoDigits(Atom atom) => atom.Lower.Length > 3 && atom.Lower[^3] == ':';
}
