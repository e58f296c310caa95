using System.Globalization;
using StudioBot.Records;

namespace StudioBot.Chat.Pings;

/// <summary>The group in which the studio talks: the first in which one of its members was heard.</summary>
public static class StudioGroup
{
    internal const string Name = "group";

    /// <summary>Keeps the group of this message, unless one is known already. Nobody set it, so no undo takes it back.
    /// </summary>
    public static void Learn(Turn turn, StudioSession session)
    {
        if (turn is { Chat: ChatKind.Group, Member: not null, ChatId: { } chat } && Of(session) is null)
        {
            session.Studio.Set(Name, chat.ToString(CultureInfo.InvariantCulture));
        }
    }

    /// <summary>A chat has another number: where it is the studio's group, that follows. No undo takes it back.
    /// </summary>
    public static void Follow(long from, long to, StudioSession session)
    {
        if (Of(session) == from)
        {
            session.Studio.Set(Name, to.ToString(CultureInfo.InvariantCulture));
        }
    }

    /// <summary>Its chat; none while nobody was heard in one.</summary>
    internal static long? Of(StudioView view) => view.Studio.Setting(Name) is { } kept
        ? long.Parse(kept, CultureInfo.InvariantCulture)
        : null;
}
