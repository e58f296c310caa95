namespace StudioBot.Host.Settings;

/// <summary>The program's own settings, checked.</summary>
/// <param name="DataFolder">The folder of <c>studio.db</c>, whole; it need not exist.</param>
/// <param name="Token">The chat service's token; none means that the terminal is the chat.</param>
/// <param name="ApiUrl">Where the chat service answers; none means its own public address.</param>
internal sealed record StudioSettings(string DataFolder, Secret? Token, Uri? ApiUrl)
{
    /// <summary>The studio's file.</summary>
    public string StudioPath => Path.Combine(DataFolder, "studio.db");
}
