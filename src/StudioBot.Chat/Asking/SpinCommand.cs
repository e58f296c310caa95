using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>spin 4in tile 120 rpm 20 s</c>: what spinning leaves on a tile.</summary>
internal sealed class SpinCommand() : Unopened(records: false)
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly FilmSlot Film = new(Size);
    private static readonly NumberSlot Turns = new(Measure.Turns, "rpm", "a speed", "120 rpm") { IsRequired = true, Unit = "rpm", Most = 3000 };
    private static readonly NumberSlot Seconds = new(Measure.Time, "seconds", "how long", "20 s") { IsRequired = true, Unit = "s", Most = 3600 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "spin", Room.Asking, "What spinning leaves on a tile.",
        [Film, Size, Turns, Seconds],
        ["spin 4in tile 120 rpm 20 s", "spin 30cm round 90 rpm 15 s 2.5 mm"])
    {
        Also = ["spun"],
    };
}
