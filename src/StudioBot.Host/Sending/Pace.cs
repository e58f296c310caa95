namespace StudioBot.Host.Sending;

/// <summary>How fast we write: below what the service lets pass, so that it need not say no.</summary>
/// <remarks>A private chat: 3 at once, then 1 a second. A group: 18 in any minute. All chats together: 25 in any
/// second. The service's own figures, of which these stay clear: about 1, 20 and 30. Counted by the machine's steady
/// clock, which nobody sets.</remarks>
internal sealed class Pace(TimeProvider time)
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    private readonly Lock turn = new();
    private readonly long born = time.GetTimestamp();
    private readonly Window all = new(25, Second);
    private readonly Dictionary<long, Limit> chats = [];

    /// <summary>Who has to wait at this moment, and until when the next one has to.</summary>
    public PaceNow Look()
    {
        var now = Now;
        lock (turn)
        {
            var resting = chats.Where(chat => chat.Value.Opens() > now).ToList();
            var openings = resting.Select(chat => chat.Value.Opens()).Append(all.Opens())
                .Where(opens => opens > now)
                .ToList();
            return new PaceNow(
                all.Room(now),
                [.. resting.Select(chat => chat.Key)],
                openings.Count > 0 ? openings.Min() - now : null);
        }
    }

    /// <summary>Notes that something is being sent to this chat now.</summary>
    public void Note(long chat)
    {
        var now = Now;
        lock (turn)
        {
            Forget(now);
            all.Note(now);
            LimitOf(chat).Note(now);
        }
    }

    // Since it was made.
    private TimeSpan Now => time.GetElapsedTime(born);

    private Limit LimitOf(long chat)
    {
        if (!chats.TryGetValue(chat, out var limit))
        {
            // Groups have negative numbers.
            limit = chat < 0 ? new Window(18, Minute) : new Burst(3, Second);
            chats.Add(chat, limit);
        }

        return limit;
    }

    private void Forget(TimeSpan now)
    {
        if (chats.Count < 1000)
        {
            return;
        }

        foreach (var (chat, _) in chats.Where(entry => entry.Value.IsQuiet(now)).ToList())
        {
            chats.Remove(chat);
        }
    }

    private abstract class Limit
    {
        public abstract TimeSpan Opens();

        public abstract bool IsQuiet(TimeSpan now);

        public abstract void Note(TimeSpan now);
    }

    // So many in any stretch of that length.
    private sealed class Window(int most, TimeSpan length) : Limit
    {
        // The newest `most` sends, oldest first.
        private readonly Queue<TimeSpan> sends = new();

        public override TimeSpan Opens() =>
            sends.Count < most ? TimeSpan.MinValue : sends.Peek() + length;

        public int Room(TimeSpan now) => most - sends.Count(sent => sent + length > now);

        public override bool IsQuiet(TimeSpan now) => sends.All(sent => sent + length <= now);

        public override void Note(TimeSpan now)
        {
            sends.Enqueue(now);
            if (sends.Count > most)
            {
                sends.Dequeue();
            }
        }
    }

    // So many at once, then one an interval.
    private sealed class Burst(int atOnce, TimeSpan interval) : Limit
    {
        // When everything sent so far would be through at one an interval.
        private TimeSpan through = TimeSpan.MinValue;

        public override TimeSpan Opens() =>
            through == TimeSpan.MinValue ? through : through - ((atOnce - 1) * interval);

        public override bool IsQuiet(TimeSpan now) => through <= now;

        public override void Note(TimeSpan now) => through = (through > now ? through : now) + interval;
    }
}
