using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>What was said about the air.</summary>
/// <param name="Air">How warm the room is; none where nobody said.</param>
/// <param name="Humidity">How damp it is; none where nobody said.</param>
/// <param name="Surface">How warm the piece is; none where nobody said.</param>
/// <param name="Night">How cold the night gets; none where nobody said.</param>
internal sealed record AirWords(Temperature? Air, RelativeHumidity? Humidity, Temperature? Surface, Temperature? Night);
