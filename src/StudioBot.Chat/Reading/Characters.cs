namespace StudioBot.Chat.Reading;

/// <summary>
/// Characters that phones put where people mean plainer ones; a message keeps its length, so places hold.
/// </summary>
internal static class Characters
{
    /// <summary>The message with look-alikes replaced one for one.</summary>
    public static string Plain(string text)
    {
        foreach (var character in text)
        {
            if (Plain(character) != character)
            {
                return string.Create(text.Length, text, Replace);
            }
        }

        return text;
    }

    private static void Replace(Span<char> plain, string text)
    {
        for (var at = 0; at < plain.Length; at++)
        {
            plain[at] = Plain(text[at]);
        }
    }

    /// <summary>Zero-width characters and signs of direction.</summary>
    public static bool IsInvisible(char character) =>
        character is '\u00ad' or '\u061c' or '\ufeff' or (>= '\u200b' and <= '\u200f')
            or (>= '\u202a' and <= '\u202e') or (>= '\u2060' and <= '\u2064') or (>= '\u2066' and <= '\u206f');

    /// <summary>Whether there are signs in it that no book keeps as they are: half a character, or an order to a
    /// machine.</summary>
    public static bool HoldsUnkeepable(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            var isPair = char.IsHighSurrogate(text[at]) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1]);
            at += isPair ? 1 : 0;
            if (!isPair && (char.IsSurrogate(text[at])
                || (char.IsControl(text[at]) && text[at] is not ('\n' or '\r' or '\t'))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The place at which words can be cut: this one, or the one before where it would be within one
    /// character.</summary>
    public static int Before(string text, int at) =>
        at > 0 && at < text.Length && char.IsLowSurrogate(text[at]) && char.IsHighSurrogate(text[at - 1]) ? at - 1 : at;

    /// <summary>The value of ½ and its like; none for other characters.</summary>
    public static double? Fraction(char character) => character switch
    {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅓' => 1 / 3.0,
        '⅔' => 2 / 3.0,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => null,
    };

    private static char Plain(char character) => character switch
    {
        '\u00a0' or '\u2007' or '\u2009' or '\u200a' or '\u202f' or '\t' or '\r' => ' ',
        '∶' or '：' => ':',
        '×' or '✕' or '✖' => 'x',
        '“' or '”' or '″' or '„' => '"',
        '‘' or '’' or '′' or '`' => '\'',
        '–' or '—' or '−' or '‐' or '‑' => '-',
        '，' => ',',
        '⁄' or '∕' => '/',
        'º' or '˚' => '°',
        >= '０' and <= '９' => (char)(character - '０' + '0'),
        _ => character,
    };
}
