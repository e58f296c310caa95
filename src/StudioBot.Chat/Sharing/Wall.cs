using System.Globalization;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Replies;
using StudioBot.Records;

namespace StudioBot.Chat.Sharing;

/// <summary>The wall: one pinned message in a group that is kept current.</summary>
/// <param name="Chat">In which group.</param>
/// <param name="Hung">When it was asked for: asked for again, it is a new message.</param>
public sealed record Wall(long Chat, DateTimeOffset Hung)
{
    /// <summary>Under which name among the studio's settings it is kept which message stands there now.</summary>
    public const string Standing = "wall standing";

    internal const string Name = "wall";

    /// <summary>As the studio has set it; none while nobody wants one.</summary>
    public static Wall? Of(StudioView view)
    {
        if (view.Studio.Setting(Name)?.Split(' ') is not [var chat, var hung])
        {
            return null;
        }

        return new Wall(
            long.Parse(chat, CultureInfo.InvariantCulture),
            DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(hung, CultureInfo.InvariantCulture)));
    }

    /// <summary>A chat has another number: its wall follows. No undo takes it back.</summary>
    public static void Follow(long from, long to, StudioSession session)
    {
        if (Of(session) is { } wall && wall.Chat == from)
        {
            session.Studio.Set(Name, (wall with { Chat = to }).Kept);
        }
    }

    /// <summary>Hangs it: in the group where that is said, else in the studio's own.</summary>
    internal static Reply Hang(Writing writing)
    {
        var here = writing.Turn is { Chat: ChatKind.Group, ChatId: { } group } ? group : (long?)null;
        if ((here ?? StudioGroup.Of(writing.Session)) is not { } chat)
        {
            return new Reply(
                new Block.Headline("No group is known yet. Nothing recorded."),
                new Block.Line("Say it in the group that the wall is for:"),
                new Block.Sample("/wall"))
            {
                IsTrouble = true,
            };
        }

        writing.Session.Studio.Set(Name, new Wall(chat, writing.Now).Kept, writing.Act);
        return new Reply(
            new Block.Headline(here is null ? "The wall comes to the studio's group." : "The wall comes in a moment."),
            new Block.Line("One message says what dries, is ready, is coated and runs low. I pin it, where I may pin, "
                + "and change it in place when something changes."));
    }

    /// <summary>The studio has another group: what hangs in the one before comes there.</summary>
    internal static void MoveTo(long chat, Writing writing)
    {
        if (Of(writing.Session) is { } wall && wall.Chat != chat)
        {
            writing.Session.Studio.Set(Name, new Wall(chat, writing.Now).Kept, writing.Act);
        }
    }

    /// <summary>Takes it down.</summary>
    internal static Reply TakeDown(Writing writing)
    {
        if (Of(writing.Session) is null)
        {
            return new Reply(
                new Block.Headline("No wall hangs anywhere. Nothing recorded."), new Block.Sample("wall"))
            {
                IsTrouble = true,
            };
        }

        writing.Session.Studio.Set(Name, null, writing.Act);
        return new Reply(new Block.Headline("The wall is taken down."));
    }

    private string Kept => string.Create(CultureInfo.InvariantCulture, $"{Chat} {Hung.ToUnixTimeMilliseconds()}");
}
