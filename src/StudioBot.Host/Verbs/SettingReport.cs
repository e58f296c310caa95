using StudioBot.Host.Settings;

namespace StudioBot.Host.Verbs;

/// <summary>What is wrong with the settings, as lines to read.</summary>
internal static class SettingReport
{
    /// <summary>One line a trouble; none where all is well.</summary>
    public static IReadOnlyList<string> Lines(IReadOnlyList<SettingTrouble> own, TradeReading trade) =>
    [
        .. Own(own),
        .. trade is TradeReading.Wrong wrong ? wrong.Errors.Select(error => error.ToString()) : [],
    ];

    /// <summary>One line a trouble of the program's own settings.</summary>
    public static IEnumerable<string> Own(IEnumerable<SettingTrouble> troubles) => troubles.Select(trouble =>
        $"{trouble.Key} = {trouble.Shown}: {Sentence(trouble.Why)} Example: {trouble.Example}");

    private static string Sentence(string why) => why.EndsWith('?') ? why : why + ".";
}
