using System.Text.Json;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Sending;

/// <summary>Tells stewards what did not arrive: silence would look like an answer that is still to come.</summary>
/// <remarks>Strangers don't count.</remarks>
internal static class Undelivered
{
    private const int MostLetters = 60;

    /// <summary>A message is given up.</summary>
    public static void GivenUp(StudioSession session, Post post, string why, DateTimeOffset now)
    {
        if (NameOf(session, post.ChatId) is { } who)
        {
            StewardNotice.Put(
                session,
                $"given up {post.ChatId}",
                now,
                post.ChatId,
                $"A message to {who} was given up, {why}: “{FirstWords(post)}”",
                "What was recorded stands.");
        }
    }

    /// <summary>Nothing reaches this chat any more.</summary>
    public static void Unreachable(StudioSession session, Post post, DateTimeOffset now)
    {
        if (NameOf(session, post.ChatId) is { } who)
        {
            StewardNotice.Put(
                session,
                $"unreachable {post.ChatId}",
                now,
                post.ChatId,
                $"I can't write to {who} any more: blocked, put out, or the chat is gone. "
                    + "What waited there is given up.",
                "What was recorded stands. Have somebody write to me from there.");
        }
    }

    private static string? NameOf(StudioSession session, long chat) =>
        session.Members.ByAccount(chat)?.Name ?? (chat < 0 ? "the group" : null);

    private static string FirstWords(Post post)
    {
        try
        {
            var line = LetterText.Read(post.Payload).Plain.Split('\n')[0];
            return line.Length <= MostLetters ? line : line[..MostLetters] + "…";
        }
        catch (JsonException)
        {
            // It is given up because it can't be read.
            return "…";
        }
    }
}
