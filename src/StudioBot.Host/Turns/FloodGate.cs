namespace StudioBot.Host.Turns;

/// <summary>How much one account may say: twenty at once, then one in three seconds. It is counted by the moments at
/// which things were said, so that what waited through an outage is not taken for a flood.</summary>
/// <remarks>In memory only: a restart begins anew, and may tell a flooder a second time. Messages and presses are
/// counted apart, as their moments come from two clocks.</remarks>
internal sealed class FloodGate
{
    /// <summary>So many at once.</summary>
    public const int Burst = 20;

    private const int MostKnown = 1000;

    private readonly Dictionary<(long Account, bool IsPress), Bucket> buckets = [];

    /// <summary>After so long one more.</summary>
    public static TimeSpan Step { get; } = TimeSpan.FromSeconds(3);

    /// <summary>Somebody says something.</summary>
    /// <param name="account">Who.</param>
    /// <param name="isPress">Whether by a button.</param>
    /// <param name="row">Its row: asked again, the answer is the same.</param>
    /// <param name="at">When.</param>
    public Passage Pass(long account, bool isPress, long row, DateTimeOffset at)
    {
        if (!buckets.TryGetValue((account, isPress), out var bucket))
        {
            Forget(at);
            buckets[(account, isPress)] = bucket = new Bucket(at);
        }

        return bucket.Pass(row, at);
    }

    // Who has been calm for a minute needs no place.
    private void Forget(DateTimeOffset at)
    {
        if (buckets.Count >= MostKnown)
        {
            foreach (var (whose, _) in buckets.Where(one => one.Value.IsCalm(at)).ToList())
            {
                buckets.Remove(whose);
            }
        }
    }

    private sealed class Bucket(DateTimeOffset first)
    {
        private double left = Burst;
        private DateTimeOffset last = first;
        private bool isTold;
        private readonly Dictionary<long, Passage> answers = [];
        private readonly Queue<long> rows = [];

        public bool IsCalm(DateTimeOffset at) => left + (at - last) / Step >= Burst;

        public Passage Pass(long asked, DateTimeOffset at)
        {
            if (answers.TryGetValue(asked, out var before))
            {
                return before;
            }

            Refill(at);
            var answer = Judge();
            answers.Add(asked, answer);
            rows.Enqueue(asked);
            if (rows.Count > InboxLoop.Most)
            {
                answers.Remove(rows.Dequeue());
            }

            return answer;
        }

        private void Refill(DateTimeOffset at)
        {
            if (at > last)
            {
                left = Math.Min(Burst, left + (at - last) / Step);
                last = at;
            }

            isTold &= left < Burst;
        }

        private Passage Judge()
        {
            if (left >= 1)
            {
                left--;
                return new Passage(IsFree: true, null);
            }

            var told = isTold ? (TimeSpan?)null : (1 - left) * Step;
            isTold = true;
            return new Passage(IsFree: false, told);
        }
    }
}
