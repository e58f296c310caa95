namespace StudioBot.Chat.Reading;

/// <summary>Numbers as they are spoken into a phone, up to a hundred.</summary>
internal static class NumberWords
{
    private static readonly Dictionary<string, int> ByWord = new()
    {
        ["zero"] = 0,
        ["one"] = 1,
        ["two"] = 2,
        ["three"] = 3,
        ["four"] = 4,
        ["five"] = 5,
        ["six"] = 6,
        ["seven"] = 7,
        ["eight"] = 8,
        ["nine"] = 9,
        ["ten"] = 10,
        ["eleven"] = 11,
        ["twelve"] = 12,
        ["dozen"] = 12,
        ["thirteen"] = 13,
        ["fourteen"] = 14,
        ["fifteen"] = 15,
        ["sixteen"] = 16,
        ["seventeen"] = 17,
        ["eighteen"] = 18,
        ["nineteen"] = 19,
        ["twenty"] = 20,
        ["thirty"] = 30,
        ["forty"] = 40,
        ["fifty"] = 50,
        ["sixty"] = 60,
        ["seventy"] = 70,
        ["eighty"] = 80,
        ["ninety"] = 90,
        ["hundred"] = 100,
    };

    /// <summary>The number of this word; none where it is none. Tens and ones may be joined: twenty-five.</summary>
    public static int? Of(string word)
    {
        if (ByWord.TryGetValue(word, out var number))
        {
            return number;
        }

        var hyphen = word.IndexOf('-', StringComparison.Ordinal);
        return hyphen > 0 && ByWord.TryGetValue(word[..hyphen], out var tens) && tens is >= 20 and <= 90
            && ByWord.TryGetValue(word[(hyphen + 1)..], out var ones) && ones is >= 1 and <= 9
            ? tens + ones
            : null;
    }
}
