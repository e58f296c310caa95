using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.House;

/// <summary><c>backup</c>: a proven copy of all of the studio, as a file.</summary>
internal sealed class BackupCommand : Ask
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "backup", Room.House, "A proven copy of the studio, as a file.",
        [],
        ["backup"])
    {
        Also = ["back up"],
        StewardsOnly = true,
        PrivateOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio) => studio.IsSample
        ? new Reply(
            new Block.Headline("Nothing to back up"),
            new Block.Line("This studio is invented, and nothing in it is kept."))
        : new Reply(
            new Block.Headline("A backup of the studio, as it is now"),
            new Block.Line("The file follows once it is proven. Everybody's records are in it: keep it where only you can read it."))
        {
            BringsBackup = true,
        };
}
