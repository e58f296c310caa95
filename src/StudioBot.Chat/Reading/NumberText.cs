using System.Globalization;

namespace StudioBot.Chat.Reading;

/// <summary>What the digits, points and commas of one number say.</summary>
internal static class NumberText
{
    /// <summary>The value and what is odd about it; a comma is a decimal one unless it groups thousands.</summary>
    public static (double Value, NumberFlaw Flaw) Read(string typed)
    {
        var points = typed.AsSpan().Count('.');
        var commas = typed.AsSpan().Count(',');
        return (points, commas) switch
        {
            ( <= 1, 0) => Parse(typed),
            (0, 1) => Comma(typed),
            (0, _) when Groups(typed, ',') => Parse(typed.Replace(",", "", StringComparison.Ordinal)),
            (1, >= 1) when typed.IndexOf('.', StringComparison.Ordinal) > typed.LastIndexOf(',') =>
                Parse(typed.Replace(",", "", StringComparison.Ordinal)),
            ( >= 1, 1) when typed.LastIndexOf('.') < typed.IndexOf(',', StringComparison.Ordinal) =>
                Parse(typed.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')),
            _ => (0, NumberFlaw.NotANumber),
        };
    }

    /// <summary>Several whole numbers run together with commas: 17,18,21.</summary>
    public static bool IsList(string typed) =>
        typed.All(character => char.IsAsciiDigit(character) || character == ',') && !Groups(typed, ',');

    private static (double Value, NumberFlaw Flaw) Comma(string typed)
    {
        var (value, flaw) = Parse(typed.Replace(',', '.'));
        return flaw == NumberFlaw.None && Groups(typed, ',') ? (value, NumberFlaw.TwoReadings) : (value, flaw);
    }

    private static bool Groups(string typed, char mark)
    {
        var groups = typed.TrimStart('-').Split(mark);
        return groups[0].Length is >= 1 and <= 3 && groups[0] != "0" && groups.Skip(1).All(group => group.Length == 3);
    }

    private static (double Value, NumberFlaw Flaw) Parse(string typed) =>
        double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? double.IsFinite(value) ? (value, NumberFlaw.None) : (0, NumberFlaw.Absurd)
            : (0, NumberFlaw.NotANumber);
}
