using StudioBot.Host.Health;
using StudioBot.Host.Sending;
using StudioBot.Records;

namespace StudioBot.Host.Turns;

/// <summary>Has what waits in the inbox settled, each chat in its order, many messages in one commit.</summary>
internal sealed class InboxLoop(
    StudioFile file,
    Clerk clerk,
    IWire wire,
    Bell inbox,
    Sender sender,
    Outage outage,
    Counts counts,
    TimeProvider time)
{
    /// <summary>So many are settled in one commit: others wait for the lane no longer than that takes.</summary>
    public const int Most = 100;

    private static readonly TimeSpan LongestRest = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan RestAfterTrouble = TimeSpan.FromSeconds(1);

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            var settled = await Settle(stop);
            var broken = settled.Count(one => one.Broke);
            if (broken == settled.Count)
            {
                await inbox.Wait(
                    outage.Why is not null ? Outage.Rest : broken > 0 ? RestAfterTrouble : LongestRest, stop);
            }
        }
    }

    /// <summary>Stores what came and settles what waits, in one commit.</summary>
    /// <exception cref="UnwritableStudioException">The disk takes nothing more, and nothing of it stands.</exception>
    public void Receive(Action<StudioSession> store, CancellationToken stop)
    {
        try
        {
            Settle(store, Most, stop);
        }
        catch (Exception broken) when (broken is not OperationCanceledException)
        {
            // What came is kept at least; what was in the way of its answer is met again, and told, by the loop.
            file.Write(store);
        }

        inbox.Ring();
    }

    private List<SettledRow> Settle(Action<StudioSession> first, int most, CancellationToken stop)
    {
        List<SettledRow> settled;
        try
        {
            settled = sender.Along(session =>
            {
                first(session);
                return Settled(session, most);
            });
        }
        catch
        {
            clerk.Forget();
            throw;
        }

        if (settled.Count > 0)
        {
            outage.Over();
        }

        foreach (var press in settled.Select(one => one.Press).OfType<PressNotice>())
        {
            _ = wire.AnswerPress(press.Press, press.Notice, stop);
        }

        return settled;
    }

    // The first of each chat, then the second of each: none waits for all of another's. After one that broke, the rest
    // of its chat waits too.
    private List<SettledRow> Settled(StudioSession session, int most)
    {
        var start = time.GetTimestamp();
        List<SettledRow> settled = [];
        HashSet<long> stuck = [];
        while (settled.Count < most)
        {
            var heads = session.Inbox.Next(most).Where(row => !stuck.Contains(row.ChatId))
                .Take(most - settled.Count).ToList();
            if (heads.Count == 0)
            {
                break;
            }

            var round = clerk.Settle(heads, session, time.GetUtcNow());
            stuck.UnionWith(round.Where(one => one.Broke).Select(one => one.Row.ChatId));
            settled.AddRange(round);
        }

        settled.ForEach(one => counts.Settled(time.GetElapsedTime(start) / settled.Count, one.Broke));
        return settled;
    }

    // Where the disk does not take them all, maybe it takes one.
    private async Task<List<SettledRow>> Settle(CancellationToken stop)
    {
        try
        {
            return Settle(_ => { }, Most, stop);
        }
        catch (UnwritableStudioException)
        {
            try
            {
                return Settle(_ => { }, 1, stop);
            }
            catch (UnwritableStudioException full)
            {
                var waiting = file.Write(session => session.Inbox.Next());
                await outage.Tell(wire, waiting.Select(row => row.ChatId), full, stop);
                return [];
            }
        }
    }
}
