using System.Globalization;
using StudioBot.Chat;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Sharing;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.House;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;

namespace StudioBot.Endurance.Tests;

/// <summary>What a member said, and when; one that keeps house looks at the shelf where there are no words.</summary>
internal sealed record SaidLine(DateTimeOffset At, string By, string Words, bool IsAgreed);

/// <summary>
/// A year of an invented studio of twenty, all of it typed: what is used at once, on the next day, mistyped and taken
/// back, or never told; counts of a few paints a week; a bad bottle now and then. Whoever keeps house buys what
/// <c>buy</c> says, beside a shelf that is refilled at a fixed limit and sees the same days.
/// </summary>
internal sealed class YearOfTwenty : IDisposable
{
    public const int Days = 365;

    private const int Members = 20;
    private const int MonthDays = 30;
    private const double UsualMillilitres = 18;
    private const double LitrePrice = 12;
    private const double FiveLitresPrice = 45;

    private static readonly string[] Paints =
    [
        "saffron", "umber", "sienna", "cobalt", "viridian", "crimson", "indigo", "sepia", "turquoise", "coral", "olive", "plum",
        "pewter", "russet", "teal", "violet", "amber", "ivory", "jade", "lilac", "mauve", "cerise", "khaki", "maroon",
    ];

    private static readonly Craft.Practice.TradePractice Practice = Sample.Practice;

    private readonly Random random;
    private readonly StudioFile file;
    private readonly Dictionary<string, Shelf> real = [];
    private readonly Dictionary<string, Shelf> limited = [];
    private readonly List<SaidLine> today = [];
    private readonly List<(string By, string Words)> late = [];
    private readonly double[] rates;
    private readonly double[] activity;
    private Vocabulary? words;
    private int bottles;
    private int arrivals;

    public YearOfTwenty(string path, int seed)
    {
        random = new Random(seed);
        file = Founded(path);
        rates = [.. Paints.Select(_ => 6.5 + 13 * random.NextDouble())];
        activity = [.. Paints.Select((_, at) => at % 3 == 0 ? 0.35 : 1)];
    }

    /// <summary>The morning of its first day.</summary>
    public static DateTimeOffset Begin { get; } = new(2026, 1, 5, 7, 0, 0, TimeSpan.Zero);

    /// <summary>The shelf that is bought for by what the studio's book says.</summary>
    public ShelfCount ByBook { get; } = new();

    /// <summary>The shelf that is bought for at a fixed limit: a month's use, set once after the first month.</summary>
    public ShelfCount ByLimit { get; } = new();

    /// <summary>How many pings of low levels came.</summary>
    public int Pings { get; private set; }

    /// <summary>How many messages were typed, and how many of them recorded.</summary>
    public (int Said, int Recorded) Told { get; private set; }

    /// <summary>An empty studio of twenty, as each telling of the year begins.</summary>
    public static StudioFile Founded(string path)
    {
        var file = StudioFile.Open(path);
        file.Write(session =>
        {
            NewStudio.WriteInto(session, Sample.Practice, "Europe/Vienna", Begin.AddDays(-1));
            for (var member = 1; member <= Members; member++)
            {
                var added = session.Members.Add(Name(member), member == 1 ? Role.Steward : Role.Member, Begin.AddDays(-1));
                session.Members.AddAccount(1000 + member, added.Id, Begin.AddDays(-1));
            }

            foreach (var paint in Paints)
            {
                session.Materials.Add(new NewMaterial(paint, MaterialForm.Liquid)
                {
                    Packs = [Pack(1000, LitrePrice), Pack(5000, FiveLitresPrice)],
                });
            }
        });
        return file;
    }

    /// <summary>Says one line into a studio.</summary>
    /// <param name="line">Which.</param>
    /// <param name="session">That studio.</param>
    /// <param name="words">The words known there; none where they are to be gathered, before or after it.</param>
    public static Outcome Say(SaidLine line, StudioSession session, ref Vocabulary? words)
    {
        var studio = new Studio(session, Practice, isSample: false, words);
        words = studio.Words;
        var who = session.Members.All().First(member => member.Name == line.By);
        var turn = Speech.Of(who, line.Words, line.At, studio, line.IsAgreed);
        var outcome = Sample.Conversation.Take(turn, studio, session)!;
        words = line.Words.Contains("lot ", StringComparison.Ordinal) ? null : words;
        return outcome;
    }

    /// <summary>Looks at the shelf and says what is due, as the service does by itself.</summary>
    public static int Look(DateTimeOffset at, StudioSession session)
    {
        var studio = new Studio(session, Practice, isSample: false);
        StockWatch.Look(session, studio, at);
        return PingRound.Of(session, studio, at).Count;
    }

    /// <summary>Lives one day, from 0 on.</summary>
    /// <returns>All that was said, in its order.</returns>
    public IReadOnlyList<SaidLine> Live(int day)
    {
        today.Clear();
        var morning = Begin.AddDays(day);
        file.Write(session =>
        {
            if (day == 0)
            {
                Open(session, morning);
            }

            Arrive(day, morning, session);
            foreach (var (by, told) in late)
            {
                Tell(morning.AddMinutes(30 + today.Count), by, $"{told} yesterday", session);
            }

            late.Clear();
            Buy(day, morning.AddHours(2), session);
            Work(day, morning.AddHours(3), session);
            if (day % 7 == 5)
            {
                Count(day / 7, morning.AddHours(13), session);
            }
        });
        foreach (var paint in Paints)
        {
            ByBook.Worth += real[paint].Left * LitrePrice / 1000;
            ByLimit.Worth += limited[paint].Left * LitrePrice / 1000;
        }

        return [.. today];
    }

    /// <summary>What the studio's own book says now.</summary>
    public T Read<T>(Func<StudioView, T> look) => file.Read(look);

    public void Dispose() => file.Dispose();

    private static string Name(int member) => string.Create(CultureInfo.InvariantCulture, $"Ana{(char)('a' + member)}");

    private static Pack Pack(double millilitres, double price) =>
        new(new Amount.ByVolume(Volume.FromMillilitres(millilitres)), new Money((long)(100 * price)));

    // A month and a half of each is there.
    private void Open(StudioSession session, DateTimeOffset at)
    {
        for (var paint = 0; paint < Paints.Length; paint++)
        {
            var month = MonthDays * rates[paint] * activity[paint] * UsualMillilitres;
            var litres = Math.Ceiling(1.5 * month / 1000);
            real[Paints[paint]] = new Shelf(Paints[paint]) { Left = 1000 * litres };
            limited[Paints[paint]] = new Shelf(Paints[paint]) { Left = 1000 * litres };
            Bought(litres, litres * LitrePrice, Paints[paint], at.AddMinutes(paint), session);
        }
    }

    // Every thirtieth delivery is bad, and set aside when it is opened.
    private void Arrive(int day, DateTimeOffset at, StudioSession session)
    {
        foreach (var paint in Paints)
        {
            var shelf = real[paint];
            if (shelf.Comes == day)
            {
                var label = Bought(shelf.Coming / 1000, shelf.Cost, paint, at.AddMinutes(today.Count), session);
                if (++bottles % 30 == 0)
                {
                    Tell(at.AddMinutes(10 + today.Count), Name(1), $"stop lot {label}", session);
                }
                else
                {
                    shelf.Left += shelf.Coming;
                }

                shelf.Coming = 0;
            }

            var other = limited[paint];
            if (other.Comes == day)
            {
                other.Left += other.Coming;
                other.Coming = 0;
            }
        }
    }

    private string Bought(double litres, double cost, string paint, DateTimeOffset at, StudioSession session)
    {
        var label = string.Create(CultureInfo.InvariantCulture, $"B-{++arrivals}");
        Tell(
            at, Name(1 + arrivals % Members),
            string.Create(CultureInfo.InvariantCulture, $"bought {litres:0.###} L {paint} {cost:0.00} lot {label}"), session);
        return label;
    }

    private void Buy(int day, DateTimeOffset at, StudioSession session)
    {
        Pings += Look(at, session);
        today.Add(new SaidLine(at, "", "", false));
        var needs = new ShelfNeeds(new Studio(session, Practice, isSample: false), at);
        foreach (var paint in Paints)
        {
            // A carrier takes five to nine days, whoever orders.
            var days = 5 + (int)((uint)HashCode(paint, day) % 5);
            var shelf = real[paint];
            var need = needs.All().First(one => one.Material.Name == paint);
            if (shelf.Coming == 0 && need.IsWanted && need.Packs is { Cost: { } cost, Surplus: { } surplus })
            {
                Tell(at.AddMinutes(today.Count % 50), Name(1), $"ordered {paint}", session);
                (shelf.Coming, shelf.Cost, shelf.Comes) = (need.Missing.Units + surplus, cost.Cents / 100.0, day + days);
            }

            var other = limited[paint];
            if (day >= MonthDays && other.Coming == 0 && other.Left <= other.Limit)
            {
                (other.Coming, other.Comes) = (1000 * Math.Ceiling(other.Limit / 1000), day + days);
            }
        }

        if (day == MonthDays - 1)
        {
            foreach (var shelf in limited.Values)
            {
                shelf.Limit = shelf.Used;
            }
        }
    }

    // Stable from run to run, as string.GetHashCode is not.
    private static int HashCode(string paint, int day) => paint.Aggregate(17 + 31 * day, (hash, letter) => unchecked(hash * 31 + letter));

    private void Work(int day, DateTimeOffset at, StudioSession session)
    {
        List<(string Paint, int Amount)> wanted = [];
        for (var paint = 0; paint < Paints.Length; paint++)
        {
            if (random.NextDouble() < activity[paint])
            {
                var uses = rates[paint] * Season(day);
                var count = (int)uses + (random.NextDouble() < uses % 1 ? 1 : 0);
                wanted.AddRange(Enumerable.Range(0, count).Select(_ => (Paints[paint], random.Next(6, 31))));
            }
        }

        var order = wanted.OrderBy(_ => random.Next()).ToList();
        foreach (var taken in order.Chunk(4))
        {
            List<string> used = [];
            foreach (var (paint, amount) in taken.DistinctBy(one => one.Paint))
            {
                limited[paint].Take(amount, day, ByLimit);
                if (real[paint].Take(amount, day, ByBook) is > 0 and var got)
                {
                    used.Add($"{got} ml {paint}");
                }
            }

            if (used.Count > 0)
            {
                Log(at.AddSeconds(120 * today.Count), Name(random.Next(1, Members + 1)), $"used {string.Join(", ", used)}", session);
            }
        }
    }

    // More in autumn, when what is to be given is poured; less in summer.
    private static double Season(int day) => 1 - 0.35 * Math.Sin(2 * Math.PI * (day - 60) / Days) + (day is > 300 and < 345 ? 0.5 : 0);

    private void Log(DateTimeOffset at, string by, string words, StudioSession session)
    {
        switch (random.Next(100))
        {
            case < 2:
                return;
            case < 7:
                late.Add((by, words));
                return;
            case < 8:
                if (Tell(at, by, words.Replace(" ml", "0 ml", StringComparison.Ordinal), session, agrees: false).Recorded)
                {
                    Tell(at.AddSeconds(20), by, "undo", session);
                }

                break;
        }

        Tell(at.AddSeconds(90), by, words, session);
    }

    private void Count(int week, DateTimeOffset at, StudioSession session)
    {
        for (var nth = 0; nth < 4; nth++)
        {
            var paint = Paints[(4 * week + nth) % Paints.Length];
            Tell(at.AddMinutes(nth), Name(1), string.Create(CultureInfo.InvariantCulture, $"count {paint} {real[paint].Left} ml"), session);
        }
    }

    // Who is asked back agrees.
    private Outcome Tell(DateTimeOffset at, string by, string words, StudioSession session, bool agrees = true)
    {
        var line = new SaidLine(at, by, words, false);
        today.Add(line);
        var outcome = Say(line, session, ref this.words);
        if (agrees && !outcome.Recorded && outcome.Reply.Buttons.FirstOrDefault(Agreeing) is { } button)
        {
            line = new SaidLine(at.AddSeconds(5), by, button.Line, true);
            today.Add(line);
            outcome = Say(line, session, ref this.words);
        }

        if (agrees && !outcome.Recorded)
        {
            throw new InvalidOperationException($"{by}: {line.Words}\n{outcome.Reply.PlainText}");
        }

        Told = (Told.Said + 1, Told.Recorded + (outcome.Recorded ? 1 : 0));
        return outcome;
    }

    private static bool Agreeing(Chat.Replies.Button button) =>
        button.Agrees || button.Line.Contains("anyway", StringComparison.Ordinal);

    /// <summary>How a way of buying did.</summary>
    public sealed class ShelfCount
    {
        private readonly HashSet<(string, int)> days = [];

        /// <summary>On how many days a paint was not there when it was wanted, summed over the paints.</summary>
        public int StockOuts => days.Count;

        /// <summary>What lay on the shelf, summed over the days.</summary>
        public double Worth { get; set; }

        /// <summary>Of this paint there was too little on this day.</summary>
        public void Missed(string paint, int day) => days.Add((paint, day));
    }

    private sealed class Shelf(string paint)
    {
        public double Left { get; set; }

        public double Used { get; private set; }

        public double Limit { get; set; }

        public double Coming { get; set; }

        public double Cost { get; set; }

        public int Comes { get; set; } = -1;

        public double Take(int amount, int day, ShelfCount count)
        {
            Used += amount;
            var got = Math.Min(amount, Left);
            if (got < amount)
            {
                count.Missed(paint, day);
            }

            Left -= got;
            return got;
        }
    }
}
