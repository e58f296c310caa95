using System.Text.Json;
using StudioBot.Chat.Sharing;
using StudioBot.Records;

namespace StudioBot.Host.Ticks;

/// <summary>What hangs on the wall now, as it is kept among the studio's settings.</summary>
/// <param name="Chat">In which group.</param>
/// <param name="Hung">Which wall it is, by when it was asked for.</param>
internal sealed record WallStanding(long Chat, DateTimeOffset Hung)
{
    /// <summary>As which message of the service it stands there; none while it has not arrived.</summary>
    public long? Message { get; init; }

    /// <summary>The message that was pinned last, or was to be.</summary>
    public long? Pinned { get; init; }

    /// <summary>What it says, in a short print of it.</summary>
    public string? Print { get; init; }

    /// <summary>The once-key of the last post of it; none once that has arrived.</summary>
    public string? OnTheWay { get; init; }

    /// <summary>As it is kept; none while nothing hangs there.</summary>
    public static WallStanding? Of(StudioView view) => view.Studio.Setting(Wall.Standing) is { } kept
        ? JsonSerializer.Deserialize<WallStanding>(kept)
        : null;

    /// <summary>Keeps it; none: nothing hangs there.</summary>
    public static void Keep(StudioSession session, WallStanding? standing) =>
        session.Studio.Set(Wall.Standing, standing is null ? null : JsonSerializer.Serialize(standing));
}
