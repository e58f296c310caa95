namespace StudioBot.Host.Sending;

/// <summary>How fast we write: below what the service lets pass, so that it need not say no.</summary>
/// <remarks>A private chat: 3 at once, then 1 a second. A group: 18 in any minute. All chats together: 25 in any second.
/// The service's own figures, of which these stay clear: about 1, 20 and 30.</remarks>
internal sealed class Pace(TimeProvider time)
{
    private static readonly TimeSpan Second = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    private readonly Lock turn = new();
    private readonly Window all = new(25, Second);
    private readonly Dictionary<long, Room> chats = [];

    /// <summary>When this chat may next be written to; now or earlier where nothing stands against it.</summary>
    public DateTimeOffset Opens(long chat)
    {
        lock (turn)
        {
            var here = chats.TryGetValue(chat, out var room) ? room.Opens() : DateTimeOffset.MinValue;
            var everywhere = all.Opens();
            return here > everywhere ? here : everywhere;
        }
    }

    /// <summary>Notes that something is being sent to this chat now.</summary>
    public void Note(long chat)
    {
        var now = time.GetUtcNow();
        lock (turn)
        {
            Forget(now);
            all.Note(now);
            RoomOf(chat).Note(now);
        }
    }

    /// <summary>Leaves this chat alone until then, whatever waits for it.</summary>
    public void Hold(long chat, DateTimeOffset until)
    {
        lock (turn)
        {
            RoomOf(chat).Hold(until);
        }
    }

    private Room RoomOf(long chat)
    {
        if (!chats.TryGetValue(chat, out var room))
        {
            // Groups have negative numbers.
            room = new Room(chat < 0 ? new Window(18, Minute) : new Burst(3, Second));
            chats.Add(chat, room);
        }

        return room;
    }

    private void Forget(DateTimeOffset now)
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

    private sealed class Room(Limit limit)
    {
        private DateTimeOffset held = DateTimeOffset.MinValue;

        public DateTimeOffset Opens() => held > limit.Opens() ? held : limit.Opens();

        public bool IsQuiet(DateTimeOffset now) => held <= now && limit.IsQuiet(now);

        public void Hold(DateTimeOffset until) => held = until > held ? until : held;

        public void Note(DateTimeOffset now) => limit.Note(now);
    }

    private abstract class Limit
    {
        public abstract DateTimeOffset Opens();

        public abstract bool IsQuiet(DateTimeOffset now);

        public abstract void Note(DateTimeOffset now);
    }

    // So many in any stretch of that length.
    private sealed class Window(int most, TimeSpan length) : Limit
    {
        // The newest `most` sends, oldest first.
        private readonly Queue<DateTimeOffset> sends = new();

        public override DateTimeOffset Opens() =>
            sends.Count < most ? DateTimeOffset.MinValue : sends.Peek() + length;

        public override bool IsQuiet(DateTimeOffset now) => sends.All(sent => sent + length <= now);

        public override void Note(DateTimeOffset now)
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
        private DateTimeOffset through = DateTimeOffset.MinValue;

        public override DateTimeOffset Opens() =>
            through == DateTimeOffset.MinValue ? through : through - ((atOnce - 1) * interval);

        public override bool IsQuiet(DateTimeOffset now) => through <= now;

        public override void Note(DateTimeOffset now) => through = (through > now ? through : now) + interval;
    }
}
