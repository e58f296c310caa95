namespace StudioBot.Host.Sending;

/// <summary>A button under a message.</summary>
/// <param name="Label">What stands on it.</param>
/// <param name="Data">What comes back when it is pressed: 1 to 64 bytes of UTF-8.</param>
internal sealed record Key(string Label, string Data);
