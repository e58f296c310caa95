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
            if (atom.Kind is AtomKind.Mark || atom.IsWord("hours", "to", "from", "till", "until", "and", "between"))
            {
                taken++;
            }
            else if (atom.Kind == AtomKind.Ratio && atom.Parts.Count == 2 && atom.Lower.Contains("to", StringComparison.Ordinal))
            {
                if (!Add(draft, at + taken, hours, atom.Parts[0], 0) || !Add(draft, at + taken, hours, atom.Parts[1], 0))
                {
                    return taken + 1;
                }

                taken++;
            }
            else if (atom.Kind is AtomKind.Number or AtomKind.Ratio && atom.Parts.Count is 0 or 2)
            {
                if (!Add(draft, at + taken, hours, Math.Abs(atom.Parts.Count == 2 ? atom.Parts[0] : atom.Value), atom.Parts.Count == 2 ? atom.Parts[1] : 0))
                {
                    return taken + 1;
                }

                taken++;
            }
            else
            {
                break;
            }
        }

        if (hours.Count == 2)
        {
            draft.Said.Put(this, $"{Clock(hours[0])}-{Clock(hours[1])}");
            return taken;
        }

        draft.Slip(at, 1, "needs two hours: from and to", $"{draft.Form.Sheet.Word} quiet 22-8");
        return taken;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("quiet", value)];

    internal override string Say(string value) => "quiet " + value;

    private static bool Add(PhraseDraft draft, int at, List<TimeSpan> hours, double hour, double minute)
    {
        if (hour > 23 || minute > 59 || hour != Math.Floor(hour))
        {
            draft.Slip(at, 1, hour > 23 ? "is no hour: they go to 23" : "is no time of day");
            return false;
        }

        hours.Add(new TimeSpan((int)hour, (int)minute, 0));
        return true;
    }

    private static string Clock(TimeSpan time) => time.ToString(@"hh\:mm", CultureInfo.InvariantCulture);
}
