using System.Text.Json;

namespace StudioBot.Host.Settings;

/// <summary>A file being read, and everything found wrong so far.</summary>
internal sealed class TradePlace(string file, List<TradeSettingError> errors)
{
    private const int LongestShown = 60;

    /// <summary>How many mistakes were found so far, in every file.</summary>
    public int Found => errors.Count;

    /// <summary>Notes that the value at this key can't stand.</summary>
    public void Wrong(string key, JsonElement value, string reason, string example)
    {
        var written = value.ValueKind == JsonValueKind.Undefined ? "" : value.GetRawText();
        Wrong(key, written, reason, example);
    }

    /// <summary>Notes that this can't stand at this key.</summary>
    public void Wrong(string key, string written, string reason, string example) =>
        errors.Add(new(file, key, Shortened(written), reason, example));

    private static string Shortened(string written)
    {
        var line = string.Join(' ', written.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= LongestShown ? line : line[..LongestShown] + "…";
    }
}
