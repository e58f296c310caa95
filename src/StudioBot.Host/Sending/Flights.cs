using System.Collections.Concurrent;

namespace StudioBot.Host.Sending;

/// <summary>What is on the wire in one run of the sender, and what of it has landed and is not marked yet.</summary>
/// <param name="give">When what is on the wire is given up.</param>
internal sealed class Flights(CancellationToken give)
{
    private readonly ConcurrentDictionary<TaskCompletionSource, bool> up = new();
    private readonly ConcurrentQueue<Landing> landed = new();

    /// <summary>When what is on the wire is given up.</summary>
    public CancellationToken Give => give;

    /// <summary>How many have landed and are not marked.</summary>
    public int Unmarked => landed.Count;

    /// <summary>Until nothing is on the wire.</summary>
    public Task AllDown => Task.WhenAll(up.Keys.Select(flight => flight.Task));

    /// <summary>This one goes once the commit stands.</summary>
    public void Begin(Outgoing post) => up.TryAdd(post.Flight, true);

    /// <summary>This one is not on the wire, or no more.</summary>
    public void End(Outgoing post)
    {
        up.TryRemove(post.Flight, out _);
        post.Flight.TrySetResult();
    }

    /// <summary>One has landed, or could not be marked yet.</summary>
    public void Land(Landing one) => landed.Enqueue(one);

    /// <summary>Takes what has landed, the first one first.</summary>
    public List<Landing> TakeLanded()
    {
        List<Landing> all = [];
        while (landed.TryDequeue(out var one))
        {
            all.Add(one);
        }

        return all;
    }
}
