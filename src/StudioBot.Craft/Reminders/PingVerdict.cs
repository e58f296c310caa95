namespace StudioBot.Craft.Reminders;

/// <summary>What is to be done about a planned ping.</summary>
public abstract record PingVerdict
{
    private PingVerdict()
    {
    }

    /// <summary>Say it.</summary>
    public sealed record Send : PingVerdict;

    /// <summary>Say it, and that it comes so much late.</summary>
    public sealed record SendLate(TimeSpan By) : PingVerdict;

    /// <summary>Keep it, and ask again then.</summary>
    public sealed record Hold(DateTimeOffset Until) : PingVerdict;

    /// <summary>It is due then, by what is known now.</summary>
    public sealed record Replan(DateTimeOffset At) : PingVerdict;

    /// <summary>Drop it for a later one of its kind, to be planned in its place if it isn't yet.</summary>
    public sealed record Superseded(PlannedPing By) : PingVerdict;

    /// <summary>Its hour is gone: only in the chat's one digest, and only as what holds now.</summary>
    public sealed record TooLate(WhatHolds Now) : PingVerdict;

    /// <summary>Drop it.</summary>
    public sealed record Unwanted(WhyUnwanted Why) : PingVerdict;

    /// <summary>The verdict of the first stage that has one to give; when none has, it is sent.</summary>
    public static PingVerdict Of(PlannedPing planned, DateTimeOffset now, SubjectState state, PingWishes wishes)
    {
        var due = new DuePing(planned, now, state, wishes);
        return PingStages.InOrder.Select(stage => stage(due)).FirstOrDefault(verdict => verdict is not null)
            ?? new Send();
    }
}
