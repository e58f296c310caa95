using StudioBot.Host.Settings;

namespace StudioBot.Host.Verbs;

/// <summary>What is wrong with the settings, as lines to read.</summary>
internal static class SettingReport
{
    /// <summary>One line a trouble; none where all is well.</summary>
    public static IReadOnlyList<string> Lines(IReadOnlyList<SettingTrouble> own, TradeReading trade) =>
    [
        .. own.Select(trouble => $"{trouble.Key} = {trouble.Shown}: {trouble.Why}. Example: {trouble.Example}"),
        .. trade is TradeReading.Wrong wrong ? wrong.Errors.Select(error => error.ToString()) : [],
    ];
}
