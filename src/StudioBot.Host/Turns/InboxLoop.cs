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
            var rows = file.Write(session => session.Inbox.Next());
            var broken = 0;
            foreach (var row in rows)
            {
                broken += await Handle(row, stop) ? 0 : 1;
            }

            if (broken == rows.Count)
            {
                await inbox.Wait(
                    outage.Why is not null ? Outage.Rest : broken > 0 ? RestAfterTrouble : LongestRest, stop);
            }
        }
    }

    private async Task<bool> Handle(InboxRow row, CancellationToken stop)
    {
        var start = time.GetTimestamp();
        try
        {
            var notice = clerk.Settle(row, time.GetUtcNow());
            counts.Settled(time.GetElapsedTime(start), broke: false);
            outage.Over();
            if (notice is { } press)
            {
                notices.Add(wire.AnswerPress(press.Press, press.Notice, stop));
            }

            return true;
        }
        catch (UnwritableStudioException full)
        {
            await outage.Tell(wire, [row.ChatId], full, stop);
            return false;
        }
        catch (Exception broken) when (!stop.IsCancellationRequested)
        {
            counts.Settled(time.GetElapsedTime(start), broke: true);
            clerk.Apologise(row, broken, time.GetUtcNow());
            return false;
        }
        finally
        {
            outbox.Ring();
        }
    }
}
