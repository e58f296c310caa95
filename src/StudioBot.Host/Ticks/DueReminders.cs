using StudioBot.Chat;
using StudioBot.Chat.Pings;
using StudioBot.Craft.Practice;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Ticks;

/// <summary>Says what is due: judged, put into the outbox and settled in one commit.</summary>
/// <param name="file">The studio.</param>
/// <param name="practice">What the trade assumes.</param>
/// <param name="isSample">Whether it is the invented studio.</param>
/// <param name="isTerminal">Whether who sits at the terminal hears it.</param>
/// <param name="beforeCommit">The last that is done before the commit; a rehearsal crashes here.</param>
internal sealed class DueReminders(
    StudioFile file,
    TradePractice practice,
    bool isSample = false,
    Action? beforeCommit = null,
    bool isTerminal = false)
{
    /// <summary>Says what is due at this moment.</summary>
    /// <returns>How many messages that were.</returns>
    public int Say(DateTimeOffset now) => file.Write(session =>
    {
        var pings = PingRound.Of(session, new Studio(session, practice, isSample), now, isTerminal);
        foreach (var ping in pings)
        {
            var urgency = ping.IsDigest ? Urgency.Digest : Urgency.Ping;
            Posting.PutByItself(session, ping.Chat, ping.Owner, ping.Reply, urgency, now, onceKey: null);
        }

        if (pings.Count > 0)
        {
            beforeCommit?.Invoke();
        }

        return pings.Count;
    });
}
