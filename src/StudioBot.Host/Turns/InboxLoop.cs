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

    // What is being told of presses, beside what is settled meanwhile.
    private readonly List<Task> notices = [];

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            notices.RemoveAll(notice => notice.IsCompleted);
            var settled = await Settle(stop);
            notices.AddRange(settled.Select(one => one.Press).OfType<PressNotice>()
                .Select(press => wire.AnswerPress(press.Press, press.Notice, stop)));
            var broken = settled.Count(one => one.Broke);
            if (broken == settled.Count)
            {
                await inbox.Wait(
                    outage.Why is not null ? Outage.Rest : broken > 0 ? RestAfterTrouble : LongestRest, stop);
            }
        }
    }

    // What waits is settled in one commit: one flush of the disk carries all of it.
    private async Task<IReadOnlyList<SettledRow>> Settle(CancellationToken stop)
    {
        IReadOnlyList<InboxRow> rows = [];
        var start = time.GetTimestamp();
        try
        {
            var settled = file.Write(session =>
            {
                rows = session.Inbox.Next();
                return clerk.Settle(rows, session, time.GetUtcNow());
            });
            foreach (var one in settled)
            {
                counts.Settled(time.GetElapsedTime(start) / settled.Count, one.Broke);
            }

            if (settled.Count > 0)
            {
                outage.Over();
                outbox.Ring();
            }

            return settled;
        }
        catch (UnwritableStudioException full)
        {
            clerk.Forget();
            await outage.Tell(wire, rows.Select(row => row.ChatId), full, stop);
            return [];
        }
        catch
        {
            clerk.Forget();
            throw;
        }
    }
}
