using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Sending;

/// <summary>Writes down what became of a post.</summary>
internal sealed class Marking(Backoff backoff, TimeProvider time, ILogger log)
{
    /// <summary>Writes down how one landed. Where that breaks, it is parked, and nobody else is held up.</summary>
    public void Mark(StudioSession session, Landing one)
    {
        try
        {
            session.Attempt(() => Settle(session, one.Post, one.Delivery));
        }
        catch (Exception broken) when (broken is not (UnwritableStudioException or LostSessionException))
        {
            log.LogError(Events.PostNotMarked, broken, "Post {Post} can't be marked and is parked.", one.Post.Id);
            session.Attempt(() => session.Post.Park(one.Post.Id, time.GetUtcNow(), "could not be marked"));
        }
    }

    /// <summary>It never goes; who should know is told.</summary>
    public void GiveUp(StudioSession session, Post post, string why)
    {
        log.LogError(Events.PostParked, "Post {Post} is parked, {Why}.", post.Id, why);
        var now = time.GetUtcNow();
        session.Post.Park(post.Id, now, why);
        Undelivered.GivenUp(session, post, why, now);
    }

    private void Settle(StudioSession session, Post post, Delivery delivery)
    {
        switch (delivery)
        {
            case Delivery.Sent sent:
                session.Post.Sent(post.Id, time.GetUtcNow(), sent.MessageId);
                break;
            case Delivery.Again again:
                PutOff(session, post, again.After, again.Why, maybeSent: false);
                break;
            case Delivery.Moved moved:
                Follow(session, post, moved.To);
                break;
            case Delivery.Unclear unclear:
                PutOff(session, post, null, unclear.Why, maybeSent: true);
                break;
            case Delivery.Refused refused:
                log.LogError(Events.PostRefused, "Post {Post} was refused: {Why}", post.Id, refused.Why);
                GiveUp(session, post, "not taken by the chat service");
                break;
            case Delivery.Gone gone:
                ParkChat(session, post, gone.Why);
                break;
            default:
                throw new InvalidOperationException($"A delivery without a road: {delivery}.");
        }
    }

    private void PutOff(StudioSession session, Post post, TimeSpan? after, string why, bool maybeSent)
    {
        var wait = after ?? backoff.After(post.Tries);
        log.LogWarning(Events.PostAgain, "Post {Post} goes again in {Wait}: {Why}", post.Id, wait, why);
        session.Post.Again(post.Id, time.GetUtcNow() + wait, why, maybeSent);
    }

    private void Follow(StudioSession session, Post post, long to)
    {
        log.LogInformation(Events.ChatMoved, "Chat {From} is {To} from now on.", post.ChatId, to);
        var now = time.GetUtcNow();
        session.Post.Again(post.Id, now, "the chat has another number");
        Moving.Follow(session, post.ChatId, to, now);
    }

    private void ParkChat(StudioSession session, Post post, string why)
    {
        log.LogWarning(Events.ChatUnreachable, "Chat {Chat} can't be reached any more: {Why}", post.ChatId, why);
        var now = time.GetUtcNow();
        session.Post.Park(post.Id, now, why);
        session.Post.ParkChat(post.ChatId, now, why);
        Undelivered.Unreachable(session, post, now);
    }
}
