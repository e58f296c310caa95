using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Ticks;

/// <summary>Forgets what was settled long ago.</summary>
internal sealed class Nightly(StudioFile file, ILogger<Nightly> log)
{
    /// <summary>Forgets what is too old at this moment.</summary>
    public void Forget(DateTimeOffset now)
    {
        var rows = file.Write(session =>
            session.Inbox.Prune(now) + session.Post.Prune(now) + session.Presses.Prune(now)
            + session.Refusals.Prune(now) + session.Strangers.Prune(now)
            + session.Invitations.Prune(now - Presses.Kept));
        log.LogDebug(Events.Forgotten, "Forgot {Rows} rows that were settled long ago.", rows);
    }
}
