using StudioBot.Craft.Units;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Learning;

/// <summary>How warm the studio is, as far as somebody read it lately.</summary>
internal static class RoomNow
{
    // A room's air changes over a day; what stands in it follows in hours (common practice).
    private static readonly TimeSpan Fresh = TimeSpan.FromHours(12);

    /// <summary>The air of the first room as it was read last within half a day before this moment; none where nobody
    /// did.</summary>
    public static Temperature? Of(RoomRecords rooms, DateTimeOffset at) => rooms.Readings(at - Fresh)
        .LastOrDefault(one => one.At <= at && one.Room == rooms.All()[0].Name)
        ?.Temperature;
}
