namespace StudioBot.Host.Settings;

/// <summary>Why a setting can't be used.</summary>
/// <param name="Key">Its name.</param>
/// <param name="Shown">Its value; a mask where it is secret.</param>
/// <param name="Why">The reason, in one line.</param>
/// <param name="Example">A value that would work.</param>
internal sealed record SettingTrouble(string Key, string Shown, string Why, string Example);
