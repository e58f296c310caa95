namespace StudioBot.Endurance.Tests;

/// <summary>What a killed service was doing.</summary>
internal enum Hit
{
    /// <summary>It was not ready.</summary>
    BeforeReady,

    /// <summary>It had been handed an update whose record does not stand.</summary>
    InACommit,

    /// <summary>A message was on its way and not marked as sent.</summary>
    InASend,

    /// <summary>Anything else.</summary>
    Elsewhere,
}
