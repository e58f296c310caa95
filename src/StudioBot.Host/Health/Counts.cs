using System.Diagnostics.Metrics;

namespace StudioBot.Host.Health;

/// <summary>Counts and times of the running service, for whoever listens on this machine with the framework's own
/// tools; they hold no names and no words, and are sent nowhere.</summary>
internal sealed class Counts : IDisposable
{
    /// <summary>What the meter is called.</summary>
    public const string Name = "StudioBot";

    private const string Milliseconds = "ms";
    private const string How = "how";

    private readonly Counter<long> updates;
    private readonly Counter<long> reminders;
    private readonly Histogram<double> settled;
    private readonly Histogram<double> carried;

    /// <summary>All at zero.</summary>
    public Counts()
    {
        updates = Meter.CreateCounter<long>("studiobot.updates", "{update}", "Updates stored.");
        reminders = Meter.CreateCounter<long>("studiobot.reminders", "{message}", "Messages said by itself.");
        settled = Meter.CreateHistogram<double>(
            "studiobot.settled", Milliseconds, "From taking a message up to its commit.");
        carried = Meter.CreateHistogram<double>(
            "studiobot.carried", Milliseconds, "From taking a post up to its answer.");
    }

    /// <summary>Where to listen.</summary>
    public Meter Meter { get; } = new(Name);

    /// <summary>So many updates were stored.</summary>
    public void Stored(int count) => updates.Add(count);

    /// <summary>So many messages were put by itself.</summary>
    public void Reminded(int count) => reminders.Add(count);

    /// <summary>A message was settled, or broke.</summary>
    public void Settled(TimeSpan took, bool broke) =>
        settled.Record(took.TotalMilliseconds, new KeyValuePair<string, object?>(How, broke ? "broke" : "settled"));

    /// <summary>A post came to this end: sent, again, unclear, refused or gone.</summary>
    public void Carried(TimeSpan took, string how) =>
        carried.Record(took.TotalMilliseconds, new KeyValuePair<string, object?>(How, how));

    /// <inheritdoc/>
    public void Dispose() => Meter.Dispose();
}
