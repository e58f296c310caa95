using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Host.Logging;
using StudioBot.Host.Settings;
using StudioBot.Host.Terminal;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot</c> alone: with a token the service, without one the terminal is the chat.</summary>
internal sealed class ChatVerb : Verb
{
    /// <inheritdoc/>
    public override string Word => "";

    /// <inheritdoc/>
    public override string Usage => "[--data DIR]";

    /// <inheritdoc/>
    public override string Says => "The chat in this terminal; with a token, the service.";

    /// <inheritdoc/>
    public override async Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var found = CheckSettings.Of(place.Machine, said.Data);
        if (found.Settings.Token is not null || found.Troubles.Count > 0)
        {
            return await ServeVerb.Serve(found, place, cancellation);
        }

        return await Opening.Invented(place, invented =>
        {
            using var log = LogFile.Beside(found.Settings, place.Time);
            using var loggers = LoggerFactory.Create(builder =>
            {
                if (log is not null)
                {
                    builder.AddProvider(log);
                }
            });
            new TerminalChat(
                new Conversation(Catalogue.Find()),
                invented,
                place.Streams,
                place.Time,
                loggers.CreateLogger<TerminalChat>()).Run();
            return Task.FromResult(ExitCode.Done);
        });
    }
}
