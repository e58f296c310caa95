using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.House;

/// <summary><c>setup</c>: the four questions of a new studio; <c>setup next</c> leaves one as it is.</summary>
internal sealed class SetupCommand : Act
{
    private static readonly ChoiceSlot Onwards = new("", "next", ["next"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "setup", Room.House, "Four questions of a new studio.",
        [Onwards],
        ["setup", "setup next"])
    {
        More = "Clock, units, quiet hours, what stands on the shelf; each has an answer until it is given.",
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override bool ShowsUndo => false;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing) =>
        said.Has(Onwards) ? Setup.Next(writing) : Setup.Resume(writing);
}
