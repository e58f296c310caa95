using StudioBot.Chat.Pings;
using StudioBot.Chat.Sharing;
using StudioBot.Records;

namespace StudioBot.Host.Sending;

/// <summary>A group that became a supergroup: all that is kept under its old number follows it.</summary>
internal static class Moving
{
    /// <summary>Follows it, once; told again, nothing changes.</summary>
    /// <returns>Whether that was news.</returns>
    public static bool Follow(StudioSession session, long from, long to, DateTimeOffset now)
    {
        var isNews = session.Moves.Move(from, to, now, LetterText.Elsewhere);
        if (isNews)
        {
            StudioGroup.Follow(from, to, session);
            Wall.Follow(from, to, session);
        }

        return isNews;
    }
}
