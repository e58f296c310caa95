using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>All that the bot says by itself, found once.</summary>
internal static class PingCatalogue
{
    /// <summary>Every ping, the most pressing first.</summary>
    public static IReadOnlyList<Ping> All { get; } =
    [
        .. typeof(PingCatalogue).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Ping)) && !type.IsAbstract)
            .Select(type => (Ping)Activator.CreateInstance(type, nonPublic: true)!)
            .OrderBy(ping => ping.Sheet.Kind),
    ];

    /// <summary>The ping of this kind; none where nothing says it.</summary>
    public static Ping? Of(PingKind kind) => All.FirstOrDefault(ping => ping.Sheet.Kind == kind);
}
