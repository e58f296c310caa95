using System.Globalization;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A month: <c>2026-11</c>, <c>november</c>, <c>this month</c>.</summary>
internal sealed class PeriodSlot() : Slot<string>("a month", "2026-11")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        var now = draft.Context.Local;
        if (draft.Said.Has(this))
        {
            return 0;
        }

        if (atom.IsNumber && atom.Value is >= 2000 and <= 2200 && Dashed(draft, at) is { } iso)
        {
            return Put(draft, at, 3, (int)atom.Value, iso);
        }

        if (atom.IsWord("this", "last") && draft.At(at + 1) is { } next && next.IsWord("month"))
        {
            var month = atom.Lower == "this" ? now : now.AddMonths(-1);
            return Put(draft, at, 2, month.Year, month.Month);
        }

        return atom.Kind == AtomKind.Word && atom.Lower.Length > 2 && CalendarWords.Month(atom.Lower) is { } named
            ? Put(draft, at, 1, named > now.Month ? now.Year - 1 : now.Year, named)
            : 0;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("month", value)];

    internal override string Say(string value) => value;

    private int Put(PhraseDraft draft, int at, int taken, int year, double month)
    {
        if (month is < 1 or > 12 || month != Math.Floor(month))
        {
            draft.Slips.Add(new Slip(draft.Atoms[at].Start, draft.Chunk(at), "is no month: they go to 12"));
        }
        else
        {
            draft.Said.Put(this, string.Create(CultureInfo.InvariantCulture, $"{year:0000}-{month:00}"));
        }

        return taken;
    }

    // The 11 of 2026-11.
    private static double? Dashed(PhraseDraft draft, int at) =>
        draft.At(at + 1)?.IsMark("-") == true && draft.At(at + 2) is { IsNumber: true } month ? month.Typed : null;
}
