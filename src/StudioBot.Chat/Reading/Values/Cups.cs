using StudioBot.Craft.Flow;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Which flow cup a word that names none was meant to name.</summary>
internal static class Cups
{
    // The cup of a make that paint is read in where its size was not told (common practice); the first is asked first.
    private static readonly string[] Usual = ["ford4", "zahn2", "iso4", "din4"];

    private static readonly string[] Names = [.. Usual, .. CupCurves.All.Select(cup => cup.Name).Except(Usual)];

    /// <summary>The nearest cup: ford4 for frod4, ford or frod; none where the word is near none.</summary>
    public static string? Near(string word)
    {
        if (word.Length < 3 || CupCurves.Find(word) is not null)
        {
            return null;
        }

        if (char.IsAsciiDigit(word[^1]))
        {
            return Nearest.All(word, Names, Nearest.Reach(word)).FirstOrDefault(cup => cup[^1] == word[^1]);
        }

        // Tin is not as good as din.
        return Array.Find(Usual, cup => Nearest.Distance(word, cup[..^1], 1) <= (cup.Length > 4 ? 1 : 0));
    }

    /// <summary>Another size of a cup's make; none where there is none.</summary>
    public static string? Sized(string cup, string size) => CupCurves.Find(cup[..^1] + size)?.Name;
}
