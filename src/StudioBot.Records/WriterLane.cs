namespace StudioBot.Records;

/// <summary>One writer at a time, in the order in which they came: who writes again and again keeps nobody waiting
/// longer than the others.</summary>
internal sealed class WriterLane
{
    private readonly Lock gate = new();
    private readonly LinkedList<Waiter> waiting = [];
    private Thread? writer;

    /// <summary>Whether this thread has the lane.</summary>
    public bool IsHeldByCurrentThread => Volatile.Read(ref writer) == Thread.CurrentThread;

    /// <summary>How many wait for it.</summary>
    public int Waiting
    {
        get
        {
            lock (gate)
            {
                return waiting.Count;
            }
        }
    }

    /// <summary>Takes the lane once all who came before have left it.</summary>
    /// <param name="longest">Waits no longer.</param>
    /// <returns>Whether this thread has it now; if so, it must <see cref="Leave"/>.</returns>
    public bool Enter(TimeSpan longest)
    {
        Waiter own;
        lock (gate)
        {
            if (writer is null)
            {
                writer = Thread.CurrentThread;
                return true;
            }

            own = new Waiter(Thread.CurrentThread);
            waiting.AddLast(own);
        }

        using (own.Turn)
        {
            if (own.Turn.Wait(longest))
            {
                return true;
            }

            // It may have been handed over in this very moment.
            lock (gate)
            {
                return !waiting.Remove(own);
            }
        }
    }

    /// <summary>Leaves it to the one who came next.</summary>
    public void Leave()
    {
        lock (gate)
        {
            var next = waiting.First?.Value;
            writer = next?.Thread;
            if (next is not null)
            {
                waiting.RemoveFirst();
                next.Turn.Set();
            }
        }
    }

    private sealed record Waiter(Thread Thread)
    {
        public ManualResetEventSlim Turn { get; } = new();
    }
}
