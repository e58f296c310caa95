using System.Globalization;
using System.Reflection;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Health;

/// <summary>Whether the clock can be right: it stands before neither what was last recorded nor the program itself.
/// </summary>
/// <remarks>What was last recorded bears the chat service's moment, so that a clock that was ahead for a while does not
/// make the right one doubtful for longer than until the next record.</remarks>
internal sealed class ClockCheck(StudioFile file, TimeProvider time, ILogger<ClockCheck> log)
{
    private static readonly TimeSpan Leeway = TimeSpan.FromMinutes(5);

    private volatile string? trouble;

    /// <summary>The day this program was released, at its beginning.</summary>
    public static DateTimeOffset Released { get; } = DateTimeOffset.ParseExact(
        typeof(ClockCheck).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
            .Single(entry => entry.Key == "Released").Value!,
        "yyyy-MM-dd",
        CultureInfo.InvariantCulture,
        DateTimeStyles.AssumeUniversal);

    /// <summary>Why it can't be right, as of the last look; none where it can. As long as there is something, the
    /// service is not ready.</summary>
    public string? Trouble => trouble;

    /// <summary>Looks whether it can be right now; trouble, and its end, is told once: in the log and to the stewards.
    /// </summary>
    public bool IsRight()
    {
        var now = time.GetUtcNow();
        var last = file.Read(view => view.Acts.LastWrittenAt());
        var found = now < Released ? Words(now, "this program was released", Released)
            : last is { } written && now < written - Leeway ? Words(now, "something was last recorded", written)
            : null;
        if (found is null && trouble is not null)
        {
            log.LogInformation(Events.ClockRight, "The clock can be right again; reminders go on.");
        }
        else if (found is not null && trouble is null)
        {
            log.LogError(Events.ClockWrong, "Reminders wait, for {Why}.", found);
            file.Write(session => StewardNotice.Put(
                session, $"clock {now:yyyy-MM-dd}", now, null, "Reminders wait until my clock is right:", $"{found}."));
        }

        trouble = found;
        return found is null;
    }

    private static string Words(DateTimeOffset now, string what, DateTimeOffset then) => string.Create(
        CultureInfo.InvariantCulture,
        $"the clock of this machine stands at {now:yyyy-MM-dd HH:mm} UTC, before {what} ({then:yyyy-MM-dd HH:mm})");
}
