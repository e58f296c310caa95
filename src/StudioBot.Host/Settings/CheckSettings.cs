using System.Globalization;
using System.Net;
using StudioBot.Host.Logging;

namespace StudioBot.Host.Settings;

/// <summary>Reads the settings and says all that is wrong with them at once.</summary>
internal static class CheckSettings
{
    private const string Lines = "lines";
    private const string Json = "json";
    private const string TokenExample = "123456789:the 35 or so letters the service gave";

    /// <summary>The settings of this machine.</summary>
    /// <param name="machine">Its variables and folders.</param>
    /// <param name="dataOption">What stands after <c>--data</c>.</param>
    public static CheckedSettings Of(Machine machine, string? dataOption)
    {
        var sources = new SettingSources(machine, dataOption);
        var troubles = new List<SettingTrouble>(sources.Troubles);
        var (folder, folderOrigin) = Folder(sources, machine, troubles);
        var (token, tokenOrigin) = Token(sources, troubles);
        var (url, urlOrigin) = sources.Find(SettingKeys.ApiUrl);
        var api = Address(url, troubles);
        var (port, portOrigin) = sources.Find(SettingKeys.HealthPort);
        var health = Port(port, troubles);
        var (command, commandOrigin) = sources.Find(SettingKeys.BackupCommand);
        CheckCommand(command, troubles);
        var (format, formatOrigin) = sources.Find(SettingKeys.LogFormat);
        var isJson = IsJson(format, troubles);
        troubles.AddRange(sources.Unknown().Select(Unknown));
        var (file, fileOrigin) = sources.Find(SettingKeys.TokenFile);
        return new CheckedSettings(
            new StudioSettings(folder, token, api) { HealthPort = health, BackupCommand = command, IsLogJson = isJson },
            [
                new(SettingKeys.Data, folder, folderOrigin),
                new(SettingKeys.Token, token?.ToString() ?? "(none)", tokenOrigin),
                new(SettingKeys.TokenFile, file ?? "(none)", fileOrigin),
                new(SettingKeys.ApiUrl, url is null ? "(the service's own)" : Redaction.Of(url), urlOrigin),
                new(SettingKeys.HealthPort, port ?? $"{StudioSettings.UsualHealthPort}", portOrigin),
                new(SettingKeys.BackupCommand, command ?? "(none)", commandOrigin),
                new(SettingKeys.LogFormat, format ?? Lines, formatOrigin),
            ],
            troubles);
    }

    // A name that is far from all of them is answered with the list.
    private static SettingTrouble Unknown((string Key, string Origin) unknown)
    {
        var near = TradeNearest.To(unknown.Key, SettingKeys.All);
        return TradeNearest.Distance(unknown.Key, near) <= near.Length / 3
            ? new(unknown.Key, $"({unknown.Origin})", $"is no setting; did you mean {near}?", near)
            : new(unknown.Key, $"({unknown.Origin})", "is no setting", string.Join(", ", SettingKeys.All));
    }

    private static void CheckCommand(string? command, List<SettingTrouble> troubles)
    {
        var why = command is null ? null
            : !Path.IsPathFullyQualified(command) ? "is no whole path of a program"
            : !File.Exists(command) ? "is no program: there is no such file"
            : null;
        if (why is not null)
        {
            troubles.Add(new(SettingKeys.BackupCommand, command!, why, "/usr/local/bin/copy-backup"));
        }
    }

    private static bool IsJson(string? format, List<SettingTrouble> troubles)
    {
        if (format is not (null or Lines or Json))
        {
            troubles.Add(new(SettingKeys.LogFormat, format, $"is neither {Lines} nor {Json}", Json));
        }

        return format == Json;
    }

    private static (string Path, string Origin) Folder(
        SettingSources sources, Machine machine, List<SettingTrouble> troubles)
    {
        var (path, origin) = DataFolder.Of(sources, machine);
        var why = path.Length == 0 ? "names no folder, and this user has no place for application data"
            : File.Exists(path) ? "is a file, not a folder"
            : null;
        if (why is not null)
        {
            troubles.Add(new(SettingKeys.Data, path, why, "/srv/studio"));
        }

        return (path, origin);
    }

    private static (Secret? Token, string Origin) Token(SettingSources sources, List<SettingTrouble> troubles)
    {
        var (value, origin) = sources.Find(SettingKeys.Token);
        var (file, fileOrigin) = sources.Find(SettingKeys.TokenFile);
        if (value is not null && file is not null)
        {
            troubles.Add(new(
                SettingKeys.TokenFile,
                file,
                $"stands beside {SettingKeys.Token}: only one can hold",
                "(leave one out)"));
            return (null, origin);
        }

        if (file is not null)
        {
            (value, origin) = (TokenFile.Read(file, troubles), $"the file, named in {fileOrigin}");
        }

        if (value is null)
        {
            return (null, origin);
        }

        var token = new Secret(value);
        if (!IsToken(value))
        {
            troubles.Add(new(
                SettingKeys.Token, token.ToString(), "is no token: a number, a colon, letters", TokenExample));
        }

        return (token, origin);
    }

    private static Uri? Address(string? url, List<SettingTrouble> troubles)
    {
        if (url is null)
        {
            return null;
        }

        var isAddress = Uri.TryCreate(url, UriKind.Absolute, out var address) && address.Scheme is "http" or "https";
        var why = !isAddress ? "is no http or https address"
            : address!.PathAndQuery != "/" || address.UserInfo.Length > 0 ? "may hold scheme, host and port only"
            : null;
        if (why is not null)
        {
            troubles.Add(new(SettingKeys.ApiUrl, Redaction.Of(url), why, "http://127.0.0.1:8081"));
        }

        return address;
    }

    private static int Port(string? words, List<SettingTrouble> troubles)
    {
        if (words is null)
        {
            return StudioSettings.UsualHealthPort;
        }

        if (int.TryParse(words, NumberStyles.None, CultureInfo.InvariantCulture, out var port)
            && port <= IPEndPoint.MaxPort)
        {
            return port;
        }

        troubles.Add(new(
            SettingKeys.HealthPort, words, $"is no port: 1 to {IPEndPoint.MaxPort}, or 0 for none", "8745"));
        return 0;
    }

    // At most 80 in all, as the service has it; the part behind the colon is 35 letters today. Looked at by hand: it
    // stands in the way of every start, for which a pattern takes its time.
    private static bool IsToken(string text) =>
        text.Split(':') is [{ Length: >= 1 and <= 20 } number, { Length: >= 20 and <= 59 } letters]
        && number.All(char.IsAsciiDigit)
        && letters.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '_' or '-');
}
