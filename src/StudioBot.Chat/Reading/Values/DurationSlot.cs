namespace StudioBot.Chat.Reading.Values;

/// <summary>How long: <c>90 min</c>, <c>2 days</c>, <c>a week</c>, <c>in 2h</c>.</summary>
internal sealed class DurationSlot() : Slot<TimeSpan>("a time", "2 days")
{
    private static readonly TimeSpan Longest = TimeSpan.FromDays(366);

    /// <summary>Whether it is counted in days, as waiting is.</summary>
    public bool InDays { get; init; }

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Time];

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = draft.Atoms[at].IsWord("in") ? 1 : 0;
        if (draft.Said.Has(this)
            || draft.At(at + lead) is not { } atom
            || !atom.Measures(Measure.Time)
            || Flaws.In(draft, at + lead) is not null)
        {
            return 0;
        }

        if (atom.Value <= 0 || atom.Value > Longest.TotalSeconds)
        {
            draft.Slip(at + lead, 1, atom.Value <= 0 ? "is no time: above zero" : "is longer than a year");
        }
        else
        {
            draft.Said.Put(this, TimeSpan.FromSeconds(atom.Value));
        }

        return lead + 1;
    }

    internal override IEnumerable<Meaning> Means(TimeSpan value)
    {
        if (!InDays || value < TimeSpan.FromDays(1) || value.TotalDays != Math.Floor(value.TotalDays))
        {
            yield return new("duration_min", Figures.Of(value.TotalMinutes));
        }

        if (InDays)
        {
            yield return new("days", Figures.Of(value.TotalDays));
        }
    }

    internal override string Say(TimeSpan value) => value.TotalHours switch
    {
        < 1 => Figures.Of(value.TotalMinutes) + " min",
        < 48 => Figures.Of(value.TotalHours) + " h",
        _ => Figures.Of(value.TotalDays) + " days",
    };
}
