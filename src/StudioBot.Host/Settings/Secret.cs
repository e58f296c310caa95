namespace StudioBot.Host.Settings;

/// <summary>A value that must never be seen: printing, logging and interpolating it show a mask.</summary>
internal sealed class Secret(string value)
{
    /// <summary>The value itself, for the one place that needs it.</summary>
    public string Reveal() => value;

    /// <summary>The mask; what stands before a colon (the bot's number) is public and helps to tell tokens
    /// apart.</summary>
    public override string ToString()
    {
        var colon = value.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && value[..colon].All(char.IsAsciiDigit) ? value[..colon] + ":***" : "***";
    }
}
