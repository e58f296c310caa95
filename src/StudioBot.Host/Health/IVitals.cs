namespace StudioBot.Host.Health;

/// <summary>How the service is, for whoever looks after it.</summary>
internal interface IVitals
{
    /// <summary>Why it counts as hung; none while it does not.</summary>
    string? Hang { get; }

    /// <summary>Why the chat service counts as silent; none while it does not.</summary>
    string? Silence { get; }

    /// <summary>Why it is not ready; none where it is.</summary>
    string? Unready { get; }

    /// <summary>Looks whether the studio answers.</summary>
    void Look();
}
