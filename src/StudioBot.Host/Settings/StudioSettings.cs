namespace StudioBot.Host.Settings;

/// <summary>The program's own settings, checked.</summary>
/// <param name="DataFolder">The folder of <c>studio.db</c>, whole; it need not exist.</param>
/// <param name="Token">The chat service's token; none means that the terminal is the chat.</param>
/// <param name="ApiUrl">Where the chat service answers; none means its own public address.</param>
internal sealed record StudioSettings(string DataFolder, Secret? Token, Uri? ApiUrl)
{
    /// <summary>Where the service tells how it is, unless another port is named.</summary>
    public const int UsualHealthPort = 8745;

    /// <summary>The port on this machine at which the service tells how it is; 0 for none.</summary>
    public int HealthPort { get; init; } = UsualHealthPort;

    /// <summary>A program to be run after each night's backup, as a whole path; none where none is.</summary>
    public string? BackupCommand { get; init; }

    /// <summary>Whether an entry of the log is a line of JSON; else a line to be read.</summary>
    public bool IsLogJson { get; init; }

    /// <summary>The studio's file.</summary>
    public string StudioPath => Path.Combine(DataFolder, "studio.db");
}
