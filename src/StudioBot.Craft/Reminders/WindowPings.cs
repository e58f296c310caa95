using StudioBot.Craft.Coats;

namespace StudioBot.Craft.Reminders;

/// <summary>When to speak of a recoat window, so that whoever wants to coat is awake to do it.</summary>
public static class WindowPings
{
    /// <summary>So long before it closes, or half the window where that is less, the closing is announced.</summary>
    public static readonly TimeSpan Warning = TimeSpan.FromHours(2);

    /// <summary>
    /// What a coat takes at the least: so long before bedtime it is announced, or after waking still open.
    /// </summary>
    public static readonly TimeSpan TimeToCoat = TimeSpan.FromHours(1);

    /// <summary>
    /// The moments, in their order; of two at once, the closing says it all. What closes in quiet hours, or too
    /// shortly after them, is announced before bedtime; who asked to be woken is told once more before it closes.
    /// </summary>
    /// <param name="window">The window; announced by its early closing.</param>
    /// <param name="quiet">The quiet hours of who hears it.</param>
    /// <param name="now">When this is planned: nothing is planned earlier.</param>
    /// <param name="wakes">They asked to be woken by a closing window.</param>
    /// <returns>Nothing after it closes; nothing before bedtime when bedtime has passed, as then the reply to the
    /// coat is the announcement.</returns>
    public static IReadOnlyList<PingMoment> Plan(RecoatWindow window, QuietHours quiet, DateTimeOffset now, bool wakes)
    {
        var closing = Closing(window, quiet);
        var opening = new PingMoment(PingKind.WindowOpens, quiet.AwakeFrom(Opening(window)));
        List<PingMoment> moments = [closing];
        if (opening.At < Alarm(window))
        {
            moments.Add(opening);
        }

        if (wakes && closing.Kind == PingKind.WindowTonight)
        {
            moments.Add(new PingMoment(PingKind.WindowCloses, Alarm(window)));
        }

        // Open still for a while after waking.
        if (!wakes && closing.Kind == PingKind.WindowTonight && quiet.IsQuiet(Alarm(window)))
        {
            moments.Add(new PingMoment(PingKind.WindowCloses, quiet.AwakeFrom(Alarm(window))));
        }

        return [.. moments
            .Select(moment => moment.At < now ? moment with { At = now } : moment)
            .Where(moment => moment.At < window.ClosesFrom)
            .Where(moment => moment.Kind != PingKind.WindowTonight || !quiet.IsQuiet(moment.At))
            .DistinctBy(moment => moment.At)
            .OrderBy(moment => moment.At)];
    }

    private static PingMoment Closing(RecoatWindow window, QuietHours quiet)
    {
        var alarm = Alarm(window);
        var night = quiet.StretchAt(window.ClosesFrom - TimeToCoat) ?? quiet.StretchAt(window.ClosesFrom);
        return night is null ? new PingMoment(PingKind.WindowCloses, quiet.AwakeFrom(alarm))
            : alarm <= night.From - TimeToCoat ? new PingMoment(PingKind.WindowCloses, alarm)
            : new PingMoment(PingKind.WindowTonight, night.From - TimeToCoat);
    }

    private static DateTimeOffset Alarm(RecoatWindow window)
    {
        var half = (window.ClosesFrom - Opening(window)) / 2;
        return window.ClosesFrom - (half < Warning ? half : Warning);
    }

    // A window that may close before it has surely opened is spoken of from where it may be open.
    private static DateTimeOffset Opening(RecoatWindow window) =>
        window.OpensBy < window.ClosesFrom ? window.OpensBy : window.OpensFrom;
}
