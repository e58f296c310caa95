using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using StudioBot.Craft.Practice;
using StudioBot.Host.Health;
using StudioBot.Host.Settings;
using StudioBot.Host.Telegram;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Verbs;

/// <summary>One studio of a service: its file and all that answers for it, sharing nothing with another but the
/// trade's values.</summary>
internal sealed class ServedStudio : IDisposable
{
    private readonly StudioSettings settings;
    private readonly Workplace place;
    private readonly StudioFile file;
    private readonly IHost host;

    private ServedStudio(StudioSettings settings, Workplace place, StudioFile file, IHost host)
    {
        (this.settings, this.place, this.file, this.host) = (settings, place, file, host);
        Vitals = host.Services.GetRequiredService<Vitals>();
    }

    /// <summary>Its data folder.</summary>
    public string Folder => settings.DataFolder;

    /// <summary>How it is.</summary>
    public Wellbeing Vitals { get; }

    /// <summary>Opens it, and founds it where it is new; where it can't be had, the reason is told and the code says
    /// it.</summary>
    /// <param name="settings">Its settings.</param>
    /// <param name="isOneOfSeveral">Whether what is told of it names it.</param>
    /// <param name="place">Where it runs.</param>
    /// <param name="practice">The trade's values.</param>
    /// <param name="code">Done where it was opened.</param>
    public static ServedStudio? Open(
        StudioSettings settings, bool isOneOfSeveral, Workplace place, TradePractice practice, out ExitCode code)
    {
        if (Opening.Open(settings.StudioPath, place, out code) is not { } file)
        {
            return null;
        }

        try
        {
            Founding.Found(file, practice, place.Time.GetUtcNow());
            if (Founding.ClaimCode(file, place.Time.GetUtcNow()) is { } claim)
            {
                var which = isOneOfSeveral ? $"The studio in {settings.DataFolder}" : "This studio";
                place.Streams.Error.WriteLine(
                    $"{which} has no steward yet. Within 15 minutes, send the bot in private:  join {claim}");
            }

            var built = ServeVerb.Built(
                settings, place, file, practice, isOneOfSeveral ? settings.DataFolder : null);
            return new ServedStudio(settings, place, file, built.Build());
        }
        catch (UnwritableStudioException no) when (OpeningTrouble.Of(no, settings.StudioPath) is { } trouble)
        {
            file.Dispose();
            code = Opening.Told(place, trouble);
            return null;
        }
    }

    /// <summary>Serves it until it is stopped, or until the chat service refuses its token.</summary>
    public async Task<ExitCode> Run(CancellationToken cancellation)
    {
        var serving = host.Services.GetRequiredService<Serving>();
        try
        {
            await host.RunAsync(cancellation);
        }
        catch (UnwritableStudioException no) when (OpeningTrouble.Of(no, settings.StudioPath) is { } trouble)
        {
            return Opening.Told(place, trouble);
        }

        if (!serving.TokenWasRefused)
        {
            return ExitCode.Done;
        }

        await place.Streams.Error.WriteLineAsync(
            "The chat service refuses the token. Ask it for the current one, and set that in the settings of "
            + $"{Folder}.");
        return ExitCode.Settings;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        host.Dispose();
        file.Dispose();
    }
}
