namespace StudioBot.Chat.Reading.Values;

/// <summary>A time zone: <c>zone Europe/Vienna</c>, <c>zone vienna</c>; case does not matter.</summary>
internal sealed class ZoneSlot() : Slot<string>("a time zone", "zone Europe/Vienna")
{
    private const string Lead = "zone";

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this) || !draft.Atoms[at].IsWord(Lead))
        {
            return 0;
        }

        if (draft.At(at + 1) is null)
        {
            draft.Slip(at, 1, "needs a city behind it", $"{draft.Form.Sheet.Word} {Example}");
            return 1;
        }

        var chunk = draft.Run(at + 1);
        var end = draft.Atoms[at + 1].Start + chunk.Length;
        var taken = draft.Atoms.Skip(at + 1).TakeWhile(atom => atom.Start < end).Count();
        if (Named(chunk) is { } zone)
        {
            draft.Said.Put(this, zone);
        }
        else
        {
            draft.Slip(
                at + 1,
                taken,
                "is no time zone: they are named by region and city",
                $"{draft.Form.Sheet.Word} {Example}");
        }

        return 1 + taken;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("zone", value)];

    internal override string Say(string value) => $"{Lead} {value}";

    // By its whole name, or by its city where only one zone ends so.
    private static string? Named(string typed)
    {
        var all = TimeZoneInfo.GetSystemTimeZones().Where(zone => zone.HasIanaId).Select(zone => zone.Id).ToList();
        if (all.Find(id => id.Equals(typed, StringComparison.OrdinalIgnoreCase)) is { } whole)
        {
            return whole;
        }

        var cities = all.Where(id => id.EndsWith("/" + typed, StringComparison.OrdinalIgnoreCase)).ToList();
        return cities.Count == 1 ? cities[0] : null;
    }
}
