namespace StudioBot.Host.Settings;

/// <summary>A setting in effect, as it may be shown.</summary>
/// <param name="Key">Its name, <c>Telegram:ApiUrl</c>.</param>
/// <param name="Shown">Its value; a mask where it is secret.</param>
/// <param name="Origin">Where the value comes from, in words.</param>
internal sealed record Setting(string Key, string Shown, string Origin);
