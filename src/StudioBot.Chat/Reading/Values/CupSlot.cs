using StudioBot.Craft.Flow;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A flow cup with its seconds: <c>ford4 22 s</c>, <c>zahn #2 27 seconds</c>.</summary>
internal sealed class CupSlot() : Slot<CupReading>("a flow cup", "ford4 22 s")
{
    // Longer than any cup drains; the curves refuse it long before.
    private const double LongestSeconds = 1e6;

    private static readonly string[] Makes = ["ford", "iso", "zahn", "din"];

    /// <summary>Words of which one must stand before it; none: nothing needs to.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    /// <summary>Whether a word names a make of cup with its number.</summary>
    public static bool IsCup(string word) => word.Length > 3 && char.IsAsciiDigit(word[^1])
        && Make(word) is not null;

    private static string? Make(string word) =>
        Array.Find(Makes, make => word.StartsWith(make, StringComparison.Ordinal));

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = Leads.Count > 0 ? 1 : 0;
        var taken = lead > 0 && draft.At(at)?.IsWord([.. Leads]) != true ? 0 : Named(draft, at + lead);
        return taken == 0 ? 0 : lead + taken;
    }

    private int Named(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this)
            || draft.At(at) is not { Kind: AtomKind.Word } atom
            || Make(atom.Lower) is not { } named)
        {
            return 0;
        }

        var taken = 1;
        var number = atom.Lower[named.Length..].TrimStart('-');
        if (number.Length == 0)
        {
            taken += draft.At(at + 1) is { } word && word.IsWord("cup") ? 1 : 0;
            if (draft.At(at + taken) is not { IsNumber: true } size)
            {
                return 0;
            }

            number = Figures.Of(size.Value);
            taken++;
        }

        var cup = named + number;
        if (CupCurves.Find(cup) is null)
        {
            draft.Slip(at, taken, "is no flow cup: ford1-5, zahn1-5, iso3-6 and din4 are known");
            return taken;
        }

        var time = Drained(draft, at + taken);
        draft.Said.Put(this, new CupReading(cup, time));
        return time is null ? taken : taken + 1;
    }

    private static TimeSpan? Drained(PhraseDraft draft, int at) =>
        draft.At(at) is { } seconds && seconds.Measures(Measure.Time) && Flaws.In(draft, at) is null
            ? TimeSpan.FromSeconds(Math.Min(seconds.Value, LongestSeconds))
            : null;

    internal override IEnumerable<Meaning> Means(CupReading value)
    {
        var wanted = Leads.Count > 0 ? "want_" : "";
        yield return new(wanted + "cup", value.Cup);
        if (value.Time is { } time)
        {
            yield return new(wanted + "seconds", Figures.Of(time.TotalSeconds));
        }
    }

    internal override string Say(CupReading value) =>
        string.Concat(Leads.Take(1).Select(lead => lead + " "))
        + value.Cup
        + (value.Time is { } time ? $" {Figures.Of(time.TotalSeconds)} s" : "");
}
