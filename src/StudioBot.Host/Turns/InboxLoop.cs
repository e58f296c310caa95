using StudioBot.Host.Health;
using StudioBot.Host.Sending;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>Has what waits in the inbox settled, each chat in its order.</summary>
internal sealed class InboxLoop(
    StudioFile file, Clerk clerk, IWire wire, Bell inbox, Bell outbox, Outage outage, Counts counts, TimeProvider time)
{
    private static readonly TimeSpan LongestRest = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan RestAfterTrouble = TimeSpan.FromSeconds(1);

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            var settled = await Settle(stop);
            Tell(settled, stop);
            var broken = settled.Count(one => one.Broke);
            if (broken == settled.Count)
            {
                await inbox.Wait(
                    outage.Why is not null ? Outage.Rest : broken > 0 ? RestAfterTrouble : LongestRest, stop);
            }
        }
    }

    /// <summary>Settles what waits, the first of each chat, in the commit of this session.</summary>
    /// <exception cref="UnwritableStudioException">The disk takes nothing more, and nothing of the session stands.
    /// </exception>
    public IReadOnlyList<SettledRow> Settle(StudioSession session)
    {
        var start = time.GetTimestamp();
        try
        {
            var settled = clerk.Settle(session.Inbox.Next(), session, time.GetUtcNow());
            foreach (var one in settled)
            {
                counts.Settled(time.GetElapsedTime(start) / settled.Count, one.Broke);
            }

            return settled;
        }
        catch
        {
            clerk.Forget();
            throw;
        }
    }

    /// <summary>Once that commit stands: whoever pressed hears so, and what was answered goes out.</summary>
    public void Tell(IReadOnlyList<SettledRow> settled, CancellationToken stop)
    {
        if (settled.Count == 0)
        {
            return;
        }

        outage.Over();
        outbox.Ring();
        foreach (var press in settled.Select(one => one.Press).OfType<PressNotice>())
        {
            _ = wire.AnswerPress(press.Press, press.Notice, stop);
        }
    }

    private async Task<IReadOnlyList<SettledRow>> Settle(CancellationToken stop)
    {
        try
        {
            return file.Write(Settle);
        }
        catch (UnwritableStudioException full)
        {
            await outage.Tell(wire, file.Write(session => session.Inbox.Next()).Select(row => row.ChatId), full, stop);
            return [];
        }
    }
}
