using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Drying;

/// <summary>A moment as instant and as the studio's wall shows it.</summary>
/// <param name="Zone">The studio's zone.</param>
/// <param name="Now">The instant.</param>
internal sealed record StudioMoment(StudioZone Zone, DateTimeOffset Now)
{
    /// <summary>The day it is in the studio.</summary>
    public DateOnly Today => Zone.DateOf(Now);

    /// <summary>The moment at which a message was typed.</summary>
    public static StudioMoment Of(Turn turn, Studio studio) => new(
        studio.Zone,
        studio.Zone.InstantOf(DateOnly.FromDateTime(turn.Local), TimeOnly.FromDateTime(turn.Local)));

    /// <summary>The day of another moment in the studio.</summary>
    public DateOnly Day(DateTimeOffset moment) => Zone.DateOf(moment);
}
