using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>wall</c>: the one message on the wall; <c>wall off</c> takes it down.</summary>
internal sealed class WallCommand : Act
{
    private static readonly ChoiceSlot Off = new("off", "off", ["off"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "wall", Room.Sharing, "A pinned message that tells how it stands.",
        [Off],
        ["wall", "wall off"])
    {
        More = "One message in the group that says what dries, is ready, is coated and runs low; pinned, where "
            + "the bot may pin, and changed in place when something changes.",
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing) =>
        said.Has(Off) ? Wall.TakeDown(writing) : Wall.Hang(writing);
}
