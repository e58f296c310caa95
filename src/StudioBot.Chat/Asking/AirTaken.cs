using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>
/// The air an answer reckons with: what was said, else the room last recorded, else what the trade assumes.
/// </summary>
/// <param name="Temperature">How warm it is.</param>
/// <param name="Humidity">How damp it is; none where only a temperature was said.</param>
/// <param name="Grounds">Where that comes from, with the age of a record: studio 80 min ago.</param>
/// <param name="IsSaid">Whether the message said it.</param>
internal sealed record AirTaken(Temperature Temperature, RelativeHumidity? Humidity, string Grounds, bool IsSaid)
{
    // Common practice: weather and a day's work change a room within half a day.
    private static readonly TimeSpan Old = TimeSpan.FromHours(12);

    /// <summary>The room, or why nothing can be said of its air.</summary>
    public Finding<RoomAir> Room => Humidity is { } humidity
        ? RoomAir.Read(Temperature, humidity)
        : new Finding<RoomAir>.None(NoFigure.Undetermined, "no humidity was said", "say it too: 55%");

    /// <summary>How long a resin flows in it once spread, or why nobody can say.</summary>
    public Finding<WorkingTime> Flow(ResinSystem resin) =>
        new PotLife(resin.WorkingTime.Value, resin.TimesAt.Value).In(Temperature);

    /// <summary>20 °C 55 %.</summary>
    public string Words =>
        Show.Degrees(Temperature) + (Humidity is { } humidity ? $" {Show.Number(humidity.Percent)} %" : "");

    /// <summary>The air for an answer.</summary>
    /// <param name="said">What the message said of it; none where it said nothing.</param>
    /// <param name="turn">When it was asked.</param>
    /// <param name="studio">Its rooms.</param>
    public static AirTaken Of(AirWords? said, Turn turn, Studio studio)
    {
        if (said?.Air is { } warm)
        {
            return new AirTaken(warm, said.Humidity, "as said", IsSaid: true);
        }

        if (studio.View.Rooms.Current().MaxBy(reading => reading.At) is not { } newest)
        {
            return new AirTaken(
                RoomAir.Assumed.Temperature,
                said?.Humidity ?? RoomAir.Assumed.Humidity,
                "taken, no room read yet",
                IsSaid: false);
        }

        var age = turn.Local - WallTime.Of(newest.At, studio);
        var read = $"{newest.Room} {WallTime.Age(newest.At, turn, studio)} ago"
            + (age > Old ? ", read it again" : "");
        return new AirTaken(newest.Temperature, said?.Humidity ?? newest.Humidity, read, IsSaid: false);
    }
}
