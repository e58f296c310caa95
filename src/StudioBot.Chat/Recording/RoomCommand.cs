using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Air;

namespace StudioBot.Chat.Recording;

/// <summary><c>room 20C 58%</c>: the air of a room.</summary>
internal sealed class RoomCommand : Act
{
    private const int MostTold = 4;

    private static readonly TimeSpan Told = TimeSpan.FromDays(2);

    private static readonly AirSlot Air = new() { TakesBare = true, NeedsBoth = true, IsRequired = true };
    private static readonly NameSlot Which = new(NameKind.Room, "room", "a room", "cupboard")
    {
        IsStrict = false,
        NamesAnyWord = true,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "room", Room.Recording, "The air of a room.",
        [Which, Air, RecordSlots.Day],
        ["room 20C 58%", "room cupboard 23C 45%"])
    {
        Also = ["rooms"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var rooms = writing.Session.Rooms;
        var room = said.Has(Which)
            ? rooms.All().First(one => one.Name.Equals(said.Of(Which), StringComparison.OrdinalIgnoreCase))
            : rooms.All()[0];
        var words = said.Of(Air);
        var (temperature, humidity) = (words.Air!.Value, words.Humidity!.Value);
        rooms.Read(room, temperature, humidity, writing.HappenedAt, writing.Act);
        writing.Touch(PiecePlace.In(room.Name, writing.Session));
        var air = new RoomAir(temperature, humidity);
        return new Reply(
            new Block.Headline(
                $"{Capital(room.Name)}: {Show.Degrees(temperature)}, {Show.Number(humidity.Percent, 0)} %."),
            new Block.Line($"Dries {Show.Number(DryingSpeed.Rate(air.Deficit), 2)} times as fast as 23 °C, 50 %."));
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
