using StudioBot.Craft.Air;

namespace StudioBot.Craft.Drying;

/// <summary>How fast a room is expected to go on drying.</summary>
/// <param name="Rate">Equivalent days a day: 1 in the reference room, 0 where drying stands still.</param>
/// <param name="Grounds">What that rests on.</param>
public readonly record struct RoomPace(double Rate, PaceGrounds Grounds)
{
    /// <summary>The pace of a room nobody has read.</summary>
    public static RoomPace Assumed { get; } = new(DryingSpeed.Rate(RoomAir.Assumed.Deficit), PaceGrounds.Assumed);

    /// <summary>The pace of a room that stays as it is.</summary>
    public static RoomPace Of(RoomAir air) => new(DryingSpeed.Rate(air.Deficit), PaceGrounds.LastWeek);
}
