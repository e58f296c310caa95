using StudioBot.Chat.Replies;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>What stewards are told of the service itself, each thing once.</summary>
internal static class StewardNotice
{
    /// <summary>Tells every steward who can be written to, unless they were told under this key within the eight days
    /// that a post is kept.</summary>
    /// <param name="session">The session that settles what it is about.</param>
    /// <param name="key">What it is about.</param>
    /// <param name="now">When.</param>
    /// <param name="butNot">A chat that can't be written to; none: every steward's can.</param>
    /// <param name="lines">The words, a line each.</param>
    public static void Put(
        StudioSession session, string key, DateTimeOffset now, long? butNot, params IEnumerable<string> lines)
    {
        var reply = new Reply([.. lines.Select(line => new Block.Line(line))]);
        var chats = session.Members.All().Where(member => member.Role == Role.Steward)
            .Select(steward => session.Members.Accounts(steward.Id)
                .FirstOrDefault(account => account != MemberRecords.Terminal && account != butNot));
        foreach (var chat in chats.Where(chat => chat != MemberRecords.Terminal))
        {
            Posting.PutByItself(session, chat, chat, reply, Urgency.Ping, now, $"notice {key} {chat}");
        }
    }
}
