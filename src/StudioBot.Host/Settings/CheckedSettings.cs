namespace StudioBot.Host.Settings;

/// <summary>What came of reading the settings.</summary>
/// <param name="Settings">To be used only where there is no trouble.</param>
/// <param name="InEffect">Every setting with its origin, fit to be shown.</param>
/// <param name="Troubles">All that is wrong, not only the first.</param>
internal sealed record CheckedSettings(
    StudioSettings Settings, IReadOnlyList<Setting> InEffect, IReadOnlyList<SettingTrouble> Troubles)
{
    /// <summary>Those that leave open where the studio is.</summary>
    public IReadOnlyList<SettingTrouble> PlaceTroubles =>
        [.. Troubles.Where(trouble => trouble.Key is SettingKeys.Data or SettingSources.FileName)];
}
