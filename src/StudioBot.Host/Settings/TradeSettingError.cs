namespace StudioBot.Host.Settings;

/// <summary>One thing in a settings file that can't stand as it is.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Key">The path of the key in it, or the line where the file itself can't be read.</param>
/// <param name="Value">What stands there, as written; empty where nothing does.</param>
/// <param name="Reason">Why it can't stand.</param>
/// <param name="Example">What would do.</param>
internal sealed record TradeSettingError(string File, string Key, string Value, string Reason, string Example)
{
    /// <summary>As the settings check prints it.</summary>
    public override string ToString() =>
        $"{File}  {Key}{(Value.Length == 0 ? "" : $" = {Value}")}: {Reason}. Try  {Example}";
}
