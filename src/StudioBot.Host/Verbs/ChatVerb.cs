using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Craft.Practice;
using StudioBot.Host.Logging;
using StudioBot.Host.Settings;
using StudioBot.Host.Terminal;
using StudioBot.Host.Ticks;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Sample;

namespace StudioBot.Host.Verbs;

/// <summary>No verb: the chat in this terminal, or the service where a token is set.</summary>
internal sealed class ChatVerb : Verb
{
    /// <inheritdoc/>
    public override string Word => "";

    /// <inheritdoc/>
    public override string Usage => "[--sample] [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "The chat in this terminal; with a token, the service.";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Options => ["--sample"];

    /// <inheritdoc/>
    public override async Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var found = CheckSettings.Of(place.Machine, said.Data);
        if (!said.Sample && (found.Settings.Token is not null || found.Troubles.Count > 0))
        {
            return await ServeVerb.Serve([found], place, cancellation);
        }

        return await Opening.WithPractice(place, practice => Task.FromResult(said.Sample
            ? Invented(practice, found, place)
            : Opening.StudioIn(found.Settings.StudioPath, place, file =>
            {
                Founding.Found(file, practice, place.Time.GetUtcNow());
                return Chat(file, practice, isSample: false, found, place);
            })));
    }

    private static ExitCode Invented(TradePractice practice, CheckedSettings found, Workplace place)
    {
        using var file = StudioFile.OpenInMemory();
        file.Write(SampleStudio.WriteInto);
        return Chat(file, practice, isSample: true, found, place);
    }

    private static ExitCode Chat(
        StudioFile file, TradePractice practice, bool isSample, CheckedSettings found, Workplace place)
    {
        Founding.SeatTerminal(file, place.Time.GetUtcNow());
        using var log = LogFile.Beside(found.Settings, place.Time);
        using var loggers = LoggerFactory.Create(builder =>
        {
            if (log is not null)
            {
                builder.AddProvider(log);
            }
        });
        new TerminalChat(
            file,
            new Answering(new Conversation(Catalogue.Find()), practice, isSample, ""),
            new DueReminders(file, practice, isSample, isTerminal: true),
            isSample,
            isSample ? new Exports(null) : Exports.Beside(found.Settings.StudioPath),
            now => BackedUp(found.Settings.StudioPath, now),
            place.Streams,
            place.Time,
            loggers.CreateLogger<TerminalChat>()).Run();
        return ExitCode.Done;
    }

    private static string BackedUp(string path, DateTimeOffset now)
    {
        try
        {
            var backups = BackupFolder.Of(path);
            var made = backups.Make(BackupKind.Asked, now);
            return $"{BackupVerb.InWords(made)}; proven. Written to {backups.FileOf(made)}";
        }
        catch (Exception no) when (OpeningTrouble.Of(no, path) is { } trouble)
        {
            return trouble.Line;
        }
    }
}
