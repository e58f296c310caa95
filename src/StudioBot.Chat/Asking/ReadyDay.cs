using StudioBot.Chat.Drying;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using RoomReading = StudioBot.Records.Rooms.RoomReading;

namespace StudioBot.Chat.Asking;

/// <summary>When a piece poured today would be ready, by own pieces and common practice, in the studio's room.
/// </summary>
internal static class ReadyDay
{
    /// <summary>The likely day and the late one, in a line; with resin the day it is cured by.</summary>
    public static string Line(PourAmounts amounts, SurfaceSet surfaces, bool isCoated, Turn turn, Studio studio)
    {
        var reading = studio.View.Rooms.Current() is [var first, ..] ? first : null;
        var air = reading is null ? null : Air(reading);
        var film = amounts.Technique.Laid.Usual;
        var shift = new PieceReckoning(studio.View, studio.Practice, turn.Now).Taught.For(film, reading?.Room);
        var outlook = ReadyOutlook.Of(
            new DryingPiece(film, WaterContent.OfFilm(surfaces.Faces * film)),
            TimeSpan.Zero,
            air is null ? RoomPace.Assumed : RoomPace.Of(air),
            air,
            shift);
        var room = air is null
            ? $"{Show.Degrees(RoomAir.Assumed.Temperature)}, {Show.Share(RoomAir.Assumed.Humidity.Share)} assumed"
            : $"{reading!.Room} {Show.Degrees(air.Temperature)}, {Show.Share(air.Humidity.Share)}";
        return outlook switch
        {
            ReadyOutlook.Expected(var estimate) => Days(
                estimate,
                isCoated,
                DateOnly.FromDateTime(turn.Local),
                studio) + $" ({room}{(shift.Pieces > 0 ? $"; {shift.Pieces} own pieces" : "")}).",
            ReadyOutlook.NoDay none => $"No ready day: {none.Why}; {none.Instead}. ({room})",
            _ => throw new InvalidOperationException($"No such outlook: {outlook}."),
        };
    }

    private static string Days(ReadyEstimate estimate, bool isCoated, DateOnly today, Studio studio)
    {
        var latest = estimate.LatestDay(today);
        var cure = studio.Practice.UsualResin.FullCure.Value;
        return $"Dry about {Show.Day(estimate.LikelyDay(today))}, 9 in 10 by {Show.Day(latest)}"
            + (isCoated ? $", cured {Show.Day(latest.AddDays((int)Math.Ceiling(cure.TotalDays)))}" : "");
    }

    private static RoomAir? Air(RoomReading reading) =>
        RoomAir.Read(reading.Temperature, reading.Humidity) is Finding<RoomAir>.Found(var air) ? air : null;
}
