using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Health;

/// <summary>Whether the service is alive, and whether it is ready: it hears from the chat service, its studio can be
/// written, and its clock can be right. A hang is counted by the machine's steady clock, which nobody sets.</summary>
internal sealed class Vitals(StudioFile file, Pulse pulse, Outage outage, ClockCheck clock, TimeProvider time)
    : Wellbeing
{
    /// <summary>So long the studio may be without an answer before the service counts as hung.</summary>
    public static readonly TimeSpan LongestHang = TimeSpan.FromMinutes(1);

    private readonly Lock turn = new();
    private long answeredAt = time.GetTimestamp();
    private string? trouble;

    /// <summary>Why the service counts as hung; none while the studio answered within a minute.</summary>
    public override string? Hang => time.GetElapsedTime(AnsweredAt) is var hang && hang > LongestHang
        ? $"the studio gave no answer since {time.GetUtcNow() - hang:u}"
        : null;

    /// <summary>Why the chat service counts as silent; none while it was heard of within five minutes.</summary>
    public override string? Silence => pulse.IsAlive
        ? null
        : $"nothing was heard from the chat service since {pulse.LastPoll:u}";

    /// <summary>Why the service is not ready; none where it is.</summary>
    public override string? Unready => Hang ?? Trouble ?? Full ?? clock.Trouble ?? Silence
        ?? (pulse.WasHeard ? null : "the chat service has not answered yet");

    private string? Full => outage.Why is { } full ? $"the studio can't be written: {full}" : null;

    private long AnsweredAt
    {
        get
        {
            lock (turn)
            {
                return answeredAt;
            }
        }
    }

    private string? Trouble
    {
        get
        {
            lock (turn)
            {
                return trouble;
            }
        }
    }

    /// <summary>Goes once through the studio's writer lane, as every record does, and changes nothing.</summary>
    public override void Look()
    {
        string? why = null;
        try
        {
            file.Write(session => session.Studio.Settings());
        }
        catch (Exception broken)
        {
            why = $"the studio can't be written: {broken.Message}";
        }

        lock (turn)
        {
            (answeredAt, trouble) = (time.GetTimestamp(), why);
        }
    }
}
