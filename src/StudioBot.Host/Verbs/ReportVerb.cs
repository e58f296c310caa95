using System.Globalization;
using System.Runtime.InteropServices;
using StudioBot.Host.Health;
using StudioBot.Host.Logging;
using StudioBot.Host.Settings;
using StudioBot.Records;
using StudioBot.Records.Backups;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot report</c>: what is needed to look for a fault, with no token, no name and no words of
/// anybody. A log that is named, or piped in (<c>-</c>), is taken along without its words.</summary>
internal sealed class ReportVerb : Verb
{
    private const string Piped = "-";

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    /// <inheritdoc/>
    public override string Word => "report";

    /// <inheritdoc/>
    public override string Usage => "report [LOG | -] [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "What a fault report needs, without secrets or words.";

    /// <inheritdoc/>
    public override (int Fewest, int Most) Takes => (0, 1);

    /// <inheritdoc/>
    public override async Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var found = CheckSettings.Of(place.Machine, said.Data);
        var trade = TradeSettings.Load(Opening.ConfigFolder(place));
        var path = found.Settings.StudioPath;
        var named = said.Words.Count > 0 ? said.Words[0] : LogFile.Of(found.Settings);
        if (said.Words.Count > 0 && named != Piped && !File.Exists(named))
        {
            await place.Streams.Error.WriteLineAsync(
                $"There is no log {named}.{Environment.NewLine}Try  studiobot {Usage}");
            return ExitCode.CommandLine;
        }

        IEnumerable<string> lines =
        [
            $"{VersionVerb.Line}, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.RuntimeIdentifier}",
            $"Machine: {RuntimeInformation.OSDescription}, {Environment.ProcessorCount} cores, "
                + $"{Megabytes(GC.GetGCMemoryInfo().TotalAvailableMemoryBytes)}, zone {TimeZoneInfo.Local.Id}",
            $"Moment: {place.Time.GetUtcNow():yyyy-MM-ddTHH:mm:ssZ}",
            "",
            "Settings",
            .. found.InEffect.Select(setting => $"  {setting.Key} = {setting.Shown}  ({setting.Origin})"),
            .. SettingReport.Lines(found.Troubles, trade).Select(line => $"  ! {line}"),
            "",
            "Studio",
            .. found.PlaceTroubles.Count > 0 ? ["  nowhere"] : Studio(path).Select(line => $"  {line}"),
            "",
            $"Service: {await Service(found.Settings, cancellation)}",
            "",
            "Log, without its words",
            .. LogDigest.Of(await Log(named, place.Streams, cancellation)).Select(line => $"  {line}"),
        ];
        foreach (var line in lines)
        {
            await place.Streams.Out.WriteLineAsync(Redaction.Of(WithoutHome(line, place.Machine)));
        }

        return ExitCode.Done;
    }

    private static IEnumerable<string> Studio(string path) => [.. Files(path), .. State(path), .. Backups(path)];

    private static IEnumerable<string> Files(string path) =>
        from name in new[] { path, path + "-wal" }
        let file = new FileInfo(name)
        select $"{file.Name}: {(file.Exists ? $"{file.Length} bytes" : "none")}";

    private static IEnumerable<string> State(string path)
    {
        Condition state;
        try
        {
            state = Condition.Of(path);
        }
        catch (UnreadableStudioException no)
        {
            return [$"can't be read: {no.Message}"];
        }

        var rows = state.Rows.OrderBy(table => table.Key, StringComparer.Ordinal);
        return
        [
            $"schema {state.Version}; {(state.Faults.Count == 0 ? "sound" : "not sound")}",
            .. state.Faults.Select(fault => $"! {fault}"),
            $"rows: {string.Join(", ", rows.Select(table => $"{table.Key} {table.Value}"))}",
        ];
    }

    private static IEnumerable<string> Backups(string path)
    {
        var folder = BackupFolder.Of(path);
        try
        {
            return folder.All() is [var newest, ..] all
                ?
                [
                    $"backups: {all.Count}, {Megabytes(all.Sum(one => one.Bytes))}",
                    $"newest: {newest.Name}, schema {newest.Version}, "
                        + (Proof.Of(folder.FileOf(newest)) is [var fault, ..] ? $"not good: {fault}" : "proven"),
                ]
                : ["backups: none"];
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            return [$"backups can't be read: {no.Message}"];
        }
    }

    private static async Task<string> Service(StudioSettings settings, CancellationToken cancellation)
    {
        if (HealthPort.AddressOf(settings, HealthPort.Ready) is not { } address)
        {
            return "has no port to be asked at";
        }

        using var http = new HttpClient { Timeout = Longest };
        try
        {
            using var answer = await http.GetAsync(address, cancellation);
            return (await answer.Content.ReadAsStringAsync(cancellation)).Trim();
        }
        catch (Exception silent) when (silent is HttpRequestException or TaskCanceledException)
        {
            return $"does not answer at {address}";
        }
    }

    private static async Task<string[]> Log(string named, Streams streams, CancellationToken cancellation) =>
        named == Piped ? (await streams.In.ReadToEndAsync(cancellation)).Split('\n')
        : File.Exists(named) ? await File.ReadAllLinesAsync(named, cancellation)
        : [];

    private static string WithoutHome(string line, Machine machine) =>
        machine.Variables.GetValueOrDefault("HOME") is { Length: > 1 } home
            ? line.Replace(home, "~", StringComparison.Ordinal)
            : line;

    private static string Megabytes(long bytes) =>
        string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB");
}
