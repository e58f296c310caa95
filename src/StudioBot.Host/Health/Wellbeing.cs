namespace StudioBot.Host.Health;

/// <summary>How the service is, for whoever looks after it: one studio's or several together.</summary>
internal abstract class Wellbeing
{
    /// <summary>Why it counts as hung; none while it does not.</summary>
    public abstract string? Hang { get; }

    /// <summary>Why the chat service counts as silent; none while it does not.</summary>
    public abstract string? Silence { get; }

    /// <summary>Why it is not ready; none where it is.</summary>
    public abstract string? Unready { get; }

    /// <summary>Looks whether the studio answers.</summary>
    public abstract void Look();
}
