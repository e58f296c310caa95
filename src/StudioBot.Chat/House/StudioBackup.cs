using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.House;

/// <summary><c>backup</c>: a proven copy of all of the studio, as a file.</summary>
/// <remarks>It begins no act: nothing changes by it.</remarks>
internal sealed class StudioBackup : Act
{
    private static readonly ChoiceSlot Backup = new("", "backup", ["backup"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "A proven copy of the studio, as a file.",
        [Backup],
        ["backup"])
    {
        AlsoSaying = ["backup"],
        StewardsOnly = true,
        PrivateOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing) => writing.Studio.IsSample
        ? new Reply(
            new Block.Headline("Nothing to back up"),
            new Block.Line("This studio is invented, and nothing in it is kept."))
        : new Reply(
            new Block.Headline("A backup of the studio, as it is now"),
            new Block.Line("The file follows once it is proven."),
            new Block.Line("Everybody's records are in it: keep it where only you can read it."))
        {
            BringsBackup = true,
        };
}
