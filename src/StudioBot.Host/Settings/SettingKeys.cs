namespace StudioBot.Host.Settings;

/// <summary>The names of the program's settings.</summary>
internal static class SettingKeys
{
    /// <summary>The data folder.</summary>
    public const string Data = "Studio:Data";

    /// <summary>The chat service's token itself.</summary>
    public const string Token = "Telegram:Token";

    /// <summary>A file that holds the token and nothing else.</summary>
    public const string TokenFile = "Telegram:TokenFile";

    /// <summary>Another address of the chat service.</summary>
    public const string ApiUrl = "Telegram:ApiUrl";

    /// <summary>The port on this machine at which the service tells how it is; 0 for none.</summary>
    public const string HealthPort = "Health:Port";

    /// <summary>A program that is run after each night's backup.</summary>
    public const string BackupCommand = "Backup:Command";

    /// <summary>How an entry of the service's log looks: <c>lines</c> or <c>json</c>.</summary>
    public const string LogFormat = "Log:Format";

    /// <summary>All of them, in the order in which they are shown.</summary>
    public static IReadOnlyList<string> All { get; } =
        [Data, Token, TokenFile, ApiUrl, HealthPort, BackupCommand, LogFormat];
}
