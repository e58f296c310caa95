using System.Globalization;
using Microsoft.Extensions.Logging;
using StudioBot.Chat.Sharing;
using StudioBot.Host.Health;
using StudioBot.Host.Logging;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Post;

namespace StudioBot.Host.Sending;

/// <summary>Carries the post: one message in flight a chat, chats side by side, and marked as sent after the
/// send.</summary>
internal sealed class Sender(
    StudioFile file,
    IWire wire,
    BackupLetter backups,
    Pace pace,
    Backoff backoff,
    Bell bell,
    TimeProvider time,
    ILogger<Sender> log)
{
    private static readonly TimeSpan UntilBackupIsMade = TimeSpan.FromSeconds(30);

    private static readonly TimeSpan LongestRest = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan ShortRest = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan GivesUpAfter = TimeSpan.FromHours(24);
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(5);

    // What lands is marked by the next commit, whoever makes it; where none comes, by one of its own after this while,
    // which is shorter where something waits to go.
    private static readonly TimeSpan Gathering = TimeSpan.FromMilliseconds(40);
    private static readonly TimeSpan ShortGathering = TimeSpan.FromMilliseconds(2);

    private readonly Lock turn = new();
    private readonly ClockJumps jumps = new(time);
    private readonly Marking marking = new(backoff, time, log);

    // None while it does not run: others that commit meanwhile let nothing go.
    private volatile Flights? open;
    private volatile bool someWait;

    // Since a commit failed: until one stands, nothing is claimed, so that no pace is used up by what does not go.
    private volatile bool isFailing;

    /// <summary>Until it is stopped; then what is on the wire has five seconds to end.</summary>
    public async Task Run(CancellationToken stop)
    {
        using var give = new CancellationTokenSource(Timeout.InfiniteTimeSpan, time);
        await using var grace = stop.Register(() => give.CancelAfter(Grace));
        file.Write(session =>
        {
            session.Post.FreeAll();
            session.Post.ClockMayBeSet(time.GetUtcNow());
        });
        var flights = new Flights(give.Token);
        try
        {
            open = flights;
            while (true)
            {
                stop.ThrowIfCancellationRequested();
                await bell.Wait(await Round(stop), stop);
            }
        }
        finally
        {
            await End(flights);
        }
    }

    /// <summary>Does this work; in the same commit what has landed is marked and what may go is claimed, and once it
    /// stands, that goes.</summary>
    /// <remarks>One flush of the disk carries a message from the chat service to its answer's way out.</remarks>
    /// <exception cref="UnwritableStudioException">The disk takes nothing more, and nothing of it stands.</exception>
    public T Along<T>(Func<StudioSession, T> work)
    {
        var (result, rest) = Commit(work);
        if (rest < LongestRest)
        {
            bell.Ring();
        }

        return result;
    }

    private (T Result, TimeSpan Next) Commit<T>(Func<StudioSession, T> work)
    {
        var now = FollowedClock();
        Flights? flights = null;
        List<Landing> marked = [];
        List<Outgoing> claimed = [];
        try
        {
            var (result, rest) = file.Write(session =>
            {
                flights = open;
                if (flights is null)
                {
                    return (work(session), LongestRest);
                }

                marked = flights.TakeLanded();
                marked.ForEach(one => marking.Mark(session, one));
                var done = work(session);
                claimed = isFailing ? [] : Claimed(session, now);
                claimed.ForEach(flights.Begin);
                return (done, isFailing ? TimeSpan.Zero : Rest(session, now));
            });
            isFailing = false;
            claimed.ForEach(post => _ = Carry(post, flights!));
            return (result, rest);
        }
        catch
        {
            // What was sent is sent: as long as it can't be written down, its chat waits and it doesn't go again.
            isFailing = true;
            marked.ForEach(one => flights!.Land(one));
            claimed.ForEach(post => flights!.End(post));
            throw;
        }
    }

    private async Task<TimeSpan> Round(CancellationToken stop)
    {
        try
        {
            return Commit(_ => true).Next;
        }
        catch (UnwritableStudioException full)
        {
            if (open is { Unmarked: > 0 and var count })
            {
                log.LogError(
                    Events.PostNotMarked, full, "{Count} posts can't be marked; it is tried again in {Wait}.",
                    count, Outage.Rest);
            }

            await Task.Delay(Outage.Rest, time, stop);
            return TimeSpan.Zero;
        }
    }

    private async Task End(Flights flights)
    {
        open = null;
        try
        {
            // Whoever still had the lane is through with it then, and what they let go is known.
            file.Write(_ => true);
        }
        finally
        {
            await flights.AllDown;
            try
            {
                file.Write(session => flights.TakeLanded().ForEach(one => marking.Mark(session, one)));
            }
            catch (UnwritableStudioException full)
            {
                log.LogWarning(
                    Events.PostOnTheWire, full,
                    "Some posts could not be marked at the end; they go again at the next start.");
            }
        }
    }

    private List<Outgoing> Claimed(StudioSession session, DateTimeOffset now)
    {
        List<Outgoing> posts = [];
        var resting = pace.Look();
        foreach (var post in session.Post.Claim(now, resting.Room, resting.RestingChats))
        {
            if (IsTooOld(post, now))
            {
                marking.GiveUp(session, post, "not sent for a day");
            }
            else
            {
                pace.Note(post.ChatId);
                posts.Add(Outgoing.Of(post, session));
            }
        }

        return posts;
    }

    // What never was tried is tried once, however long it had to wait.
    private static bool IsTooOld(Post post, DateTimeOffset now) => post.Tries > 1 && now - post.PutAt > GivesUpAfter;

    // What was put since the clock was set goes by the new one already, and at once.
    private DateTimeOffset FollowedClock()
    {
        lock (turn)
        {
            var (by, now) = jumps.Since();
            if (by != TimeSpan.Zero)
            {
                log.LogWarning(Events.ClockSet, "The clock was set by {By}.", by);
                file.Write(session =>
                {
                    session.Post.ClockSet(by);
                    session.Post.ClockMayBeSet(now);
                });
            }

            return now;
        }
    }

    // What is due and yet was not claimed waits for its chat; the end of that flight rings.
    private TimeSpan Rest(StudioSession session, DateTimeOffset now)
    {
        var next = session.Post.NextTryAt();
        someWait = next is not null;
        var due = next is null ? LongestRest : next > now ? next.Value - now : ShortRest;
        var opening = pace.Look().NextOpening ?? LongestRest;
        return next is null ? LongestRest : new[] { due, opening, LongestRest }.Min();
    }

    private async Task Carry(Outgoing post, Flights flights)
    {
        try
        {
            flights.Land(new Landing(post.Post, await Carried(post, flights.Give)));
        }
        catch (Exception) when (flights.Give.IsCancellationRequested)
        {
            log.LogWarning(
                Events.PostOnTheWire, "Post {Post} was on the wire at the end; it goes again at the next start.",
                post.Post.Id);
        }
        finally
        {
            flights.End(post);
            _ = RingSoon();
        }
    }

    private async Task RingSoon()
    {
        await Task.Delay(someWait ? ShortGathering : Gathering, time);
        bell.Ring();
    }

    private async Task<Delivery> Carried(Outgoing post, CancellationToken cancellation)
    {
        try
        {
            return await Try(post, cancellation);
        }
        catch (UnwritableStudioException full)
        {
            return new Delivery.Again(Outage.Rest, full.Message);
        }
        catch (Exception broken) when (!cancellation.IsCancellationRequested)
        {
            log.LogError(Events.PostBroke, broken, "Post {Post} broke on the way.", post.Post.Id);
            return new Delivery.Unclear(broken.GetType().Name);
        }
    }

    private async Task<Delivery> Try(Outgoing outgoing, CancellationToken cancellation)
    {
        var post = outgoing.Post;
        if (outgoing.Letter is not { } letter)
        {
            log.LogError(Events.PostUnreadable, "Post {Post} can't be read: {Why}", post.Id, outgoing.Trouble);
            return new Delivery.Refused("can't be read");
        }

        if (letter.Pin is { } isPinned)
        {
            return await Pinned(post, letter, isPinned, cancellation);
        }

        if (letter.BringsBackup)
        {
            try
            {
                letter = await Task.Run(() => backups.Filled(letter, post.PutAt), cancellation);
            }
            catch (BackupUnderWayException busy)
            {
                return new Delivery.Again(UntilBackupIsMade, busy.Message);
            }
        }

        var said = post.MaybeSent ? Telegram.ReplyMarkup.MaybeRepeated(letter) : letter;
        return outgoing.Earlier is { } message
            ? await wire.Edit(post.ChatId, message, letter, cancellation)
            : await wire.Send(post.ChatId, said, cancellation);
    }

    // A message that is gone, or of another chat by now, needs no pin; and where we may not pin, that is said once.
    private async Task<Delivery> Pinned(Post post, Letter letter, bool isPinned, CancellationToken cancellation)
    {
        if (letter.Message is not { } message)
        {
            return new Delivery.Sent(0);
        }

        var delivery = await wire.Pin(post.ChatId, message, isPinned, cancellation);
        if (delivery is not Delivery.Refused refused)
        {
            return delivery;
        }

        log.LogInformation(Events.NotPinned, "Message {Message} can't be pinned: {Why}", message, refused.Why);
        if (isPinned)
        {
            file.Write(session => Posting.PutByItself(
                session, post.ChatId, null, WallPage.MayNotPin, Urgency.Digest, time.GetUtcNow(),
                string.Create(CultureInfo.InvariantCulture, $"may not pin {post.ChatId}")));
        }

        return new Delivery.Sent(message);
    }
}
