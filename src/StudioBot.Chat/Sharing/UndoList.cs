using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>undo list</c>: your last ten records.</summary>
internal sealed class UndoList() : Unopened(records: false)
{
    private static readonly ChoiceSlot List = new("", "list", ["list"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "undo", Room.Sharing, "Your last ten records.",
        [List],
        ["undo list"]);
}
