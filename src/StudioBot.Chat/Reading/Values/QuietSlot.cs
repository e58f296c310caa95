using System.Globalization;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Hours in which nothing rings: <c>quiet 22-8</c>, <c>quiet hours 21:30 to 7:00</c>.</summary>
internal sealed class QuietSlot() : Slot<string>("quiet hours", "quiet 22-8")
{
    internal override IEnumerable<string> Lexicon => ["quiet"];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (!draft.Atoms[at].IsWord("quiet") || draft.Said.Has(this))
        {
            return 0;
        }

        List<TimeSpan> hours = [];
        var taken = 1;
        while (hours.Count < 2 && draft.At(at + taken) is { } atom)
        {
            if (Times(atom) is { } times)
            {
                foreach (var (hour, minute) in times)
                {
                    if (Wrong(hour, minute) is { } why)
                    {
                        draft.Slip(at + taken, 1, why);
                        return taken + 1;
                    }

                    hours.Add(new TimeSpan((int)hour, (int)minute, 0));
                }
            }
            else if (!IsBetween(atom))
            {
                break;
            }

            taken++;
        }

        if (hours.Count == 2)
        {
            draft.Said.Put(this, $"{Clock(hours[0])}-{Clock(hours[1])}");
        }
        else
        {
            draft.Slip(at, 1, "needs two hours: from and to", $"{draft.Form.Sheet.Word} quiet 22-8");
        }

        return taken;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("quiet", value)];

    internal override string Say(string value) => "quiet " + value;

    private static bool IsBetween(Atom atom) =>
        atom.Kind == AtomKind.Mark || atom.IsWord("hours", "to", "from", "till", "until", "and", "between");

    // 22, -8 behind a dash, 21:30, and both at once in 22 to 8.
    private static IReadOnlyList<(double Hour, double Minute)>? Times(Atom atom) => atom switch
    {
        { Kind: AtomKind.Number } => [(Math.Abs(atom.Value), 0)],
        { Kind: AtomKind.Ratio, Parts: [var from, var to] } when atom.Lower.Contains("to", StringComparison.Ordinal) =>
            [(from, 0), (to, 0)],
        { Kind: AtomKind.Ratio, Parts: [var hour, var minute] } => [(Math.Abs(hour), minute)],
        _ => null,
    };

    private static string? Wrong(double hour, double minute) => (hour, minute) switch
    {
        ( > 23, _) => "is no hour: they go to 23",
        (_, > 59) => "is no time of day",
        _ when hour != Math.Floor(hour) => "is no time of day",
        _ => null,
    };

    private static string Clock(TimeSpan time) => time.ToString(@"hh\:mm", CultureInfo.InvariantCulture);
}
