namespace StudioBot.Craft.Reminders;

/// <summary>Makes few messages of many pings: by kind, session and place, not by piece.</summary>
public static class Gathering
{
    /// <summary>A chat hears no more messages than this at once.</summary>
    public const int MostMessages = 5;

    /// <summary>Pings of one kind planned within this of each other share a message.</summary>
    public static readonly TimeSpan Together = TimeSpan.FromMinutes(1);

    /// <summary>
    /// The messages for what is due now. Each chat has one for each kind and minute; where that is too many, one for
    /// each kind; where that still is, the most pressing kinds keep theirs and the rest share one. All that came too
    /// late stands in one digest, the last.
    /// </summary>
    public static IReadOnlyList<PingMessage> Of(IEnumerable<OutgoingPing> pings) =>
        [.. pings.OrderBy(ping => ping.Planned.At).GroupBy(ping => ping.Planned.Chat).SelectMany(OfChat)];

    private static IEnumerable<PingMessage> OfChat(IGrouping<long, OutgoingPing> chat)
    {
        var late = chat.Where(ping => ping.IsTooLate).ToList();
        var room = late.Count > 0 ? MostMessages - 1 : MostMessages;
        var kinds = chat.Where(ping => !ping.IsTooLate).GroupBy(ping => ping.Planned.Kind)
            .OrderBy(kind => kind.Key).Select(kind => kind.ToList()).ToList();
        foreach (var message in Within(room, kinds))
        {
            yield return new PingMessage(chat.Key, IsDigest: false, Lines(message));
        }

        if (late.Count > 0)
        {
            yield return new PingMessage(chat.Key, IsDigest: true, Lines(late));
        }
    }

    private static List<List<OutgoingPing>> Within(int room, List<List<OutgoingPing>> kinds)
    {
        var minutes = kinds.SelectMany(ByMinute).ToList();
        return minutes.Count <= room ? minutes
            : kinds.Count <= room ? kinds
            : [.. kinds.Take(room - 1), [.. kinds.Skip(room - 1).SelectMany(kind => kind)]];
    }

    // A minute is counted from the first ping in it, so that a long row of pings doesn't hang together.
    private static List<List<OutgoingPing>> ByMinute(List<OutgoingPing> kind)
    {
        List<List<OutgoingPing>> minutes = [];
        foreach (var ping in kind)
        {
            if (minutes.Count == 0 || ping.Planned.At - minutes[^1][0].Planned.At > Together)
            {
                minutes.Add([]);
            }

            minutes[^1].Add(ping);
        }

        return minutes;
    }

    private static IReadOnlyList<PingLine> Lines(IEnumerable<OutgoingPing> pings) =>
        [.. pings.GroupBy(ping => (ping.Planned.Kind, ping.Session, ping.Place))
            .OrderBy(line => line.Key.Kind)
            .Select(line => new PingLine(line.Key.Kind, line.Key.Session, line.Key.Place, [.. line]))];
}
