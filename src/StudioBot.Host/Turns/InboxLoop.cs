using Microsoft.Extensions.Logging;
using StudioBot.Host.Health;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Records;
using StudioBot.Records.Post;

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
    TimeProvider time,
    ILogger<InboxLoop> log)
{
    /// <summary>So many are settled in one commit at most.</summary>
    public const int Most = 100;

    // After this while no further one is: others wait for the lane no longer, nor the first for the last one's answer.
    private static readonly TimeSpan Longest = TimeSpan.FromMilliseconds(250);

    private static readonly TimeSpan LongestRest = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan RestAfterTrouble = TimeSpan.FromSeconds(1);

    // Which session is the last that was begun, and which the last that stood: where they differ, what was gathered of
    // the studio may never have come to be.
    private long begun;
    private long stood;

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
        catch (UnwritableStudioException)
        {
            // Where the disk does not take the answers, maybe it takes what came.
            file.Write(store);
        }
        catch (Exception broken) when (!stop.IsCancellationRequested)
        {
            log.LogError(Events.PollBroke, broken, "What came could not be answered at once.");
            file.Write(store);
        }

        inbox.Ring();
    }

    private List<SettledRow> Settle(Action<StudioSession> first, int most, CancellationToken stop)
    {
        var start = time.GetTimestamp();
        var (settled, mine) = sender.Along(session =>
        {
            var number = Begin();
            first(session);
            return (Settled(session, most), number);
        });
        Stand(mine);
        if (settled.Count > 0)
        {
            outage.Over();
        }

        foreach (var one in settled)
        {
            counts.Settled(time.GetElapsedTime(start) / settled.Count, one.Broke);
            if (one.Press is { } press)
            {
                _ = wire.AnswerPress(press.Press, press.Notice, stop);
            }
        }

        return settled;
    }

    // Within the lane: only one at a time begins.
    private long Begin()
    {
        if (Interlocked.Read(ref stood) != begun)
        {
            clerk.Forget();
        }

        return ++begun;
    }

    private void Stand(long number)
    {
        while (Interlocked.Read(ref stood) is var before && before < number)
        {
            Interlocked.CompareExchange(ref stood, number, before);
        }
    }

    // The first of each chat, then the second of each: none waits for all of another's. After one that broke, the rest
    // of its chat waits too.
    private List<SettledRow> Settled(StudioSession session, int most)
    {
        var start = time.GetTimestamp();
        List<SettledRow> settled = [];
        HashSet<long> stuck = [];
        while (true)
        {
            var heads = session.Inbox.Next(most).Where(row => !stuck.Contains(row.ChatId)).ToList();
            foreach (var head in heads)
            {
                if (settled.Count == most || time.GetElapsedTime(start) > Longest)
                {
                    return settled;
                }

                var one = clerk.SettleWithin(head, session, time.GetUtcNow());
                settled.Add(one);
                if (one.Broke)
                {
                    stuck.Add(head.ChatId);
                }
            }

            if (heads.Count == 0)
            {
                return settled;
            }
        }
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
        catch (Exception broken) when (!stop.IsCancellationRequested)
        {
            log.LogError(Events.LoopBroke, broken, "What waits can't be settled together and is settled one by one.");
            return Alone(file.Write(session => session.Inbox.Next()), stop);
        }
    }

    // Each in commits of its own, so that one that takes all the others with it is found and counted.
    private List<SettledRow> Alone(IReadOnlyList<InboxRow> rows, CancellationToken stop)
    {
        List<SettledRow> settled = [];
        foreach (var row in rows)
        {
            try
            {
                settled.Add(new SettledRow(row, clerk.Settle(row, time.GetUtcNow()), Broke: false));
            }
            catch (Exception broken) when (broken is not UnwritableStudioException && !stop.IsCancellationRequested)
            {
                clerk.Apologise(row, broken, time.GetUtcNow());
                settled.Add(new SettledRow(row, null, Broke: true));
            }
        }

        return settled;
    }
}
