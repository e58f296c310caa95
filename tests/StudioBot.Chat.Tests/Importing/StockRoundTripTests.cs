using CsCheck;
using StudioBot.Chat.Importing;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Tests.Importing;

/// <summary>Random shelves, exported and taken into another studio; a failure prints its seed, and CsCheck_Seed takes it back.</summary>
public sealed class StockRoundTripTests
{
    private const int Shelves = 60;

    private static readonly Gen<string> OneLine = Any(
        "=1+1", "+", "-", "@", "'", "''", "\"", ",", ";", " ", "\u00A0", "＝", "−", "\u200B", "é", "🎨", "white", "A", "7").Array[0, 3]
        .Select(parts => string.Concat(parts).Trim());

    private static readonly Gen<string> Lines = Any(
        "=1+1", "+", "@x", "'", "\"", "\"\"", ",", "\n", "\r\n", "\r", "\t", " ", "\u00A0", "＋", "sour", "-").Array[1, 8]
        .Select(parts => string.Concat(parts));

    private static readonly Gen<(string Name, int Form)> Materials = Gen.Select(OneLine, Gen.Int[0, 5]);

    private static readonly Gen<Delivery> Deliveries = Gen.Select(
        Gen.Select(Gen.Int[0, 99], OneLine, Gen.Bool, Gen.Int[1, 3_000_000]),
        Gen.Select(Gen.Int[-1, 9_999], Gen.Long[0, 40_000_000_000], Gen.Int[0, 1000].Array[0, 3], Gen.Int[0, 3]),
        Lines,
        (one, other, why) => new Delivery(
            one.Item1, one.Item3 ? one.Item2 : null, one.Item4, other.Item1, other.Item2, other.Item3, other.Item4, why));

    [Fact]
    public void What_was_exported_comes_back_to_the_last_byte()
    {
        var taken = 0;
        Gen.Select(Materials.Array[0, 4], Deliveries.Array[1, 8]).Sample(
            shelf => taken += CameBack(shelf.Item1, shelf.Item2) ? 1 : 0, iter: Shelves, threads: 1);
        Assert.True(taken > Shelves / 2, $"Only {taken} shelves had anything on them.");
    }

    private static bool CameBack((string Name, int Form)[] materials, Delivery[] deliveries)
    {
        using var here = LiveStudio.Empty();
        here.File.Write(session => Fill(session, materials, deliveries, here.Now));
        if (here.Say("export stock").Reply.File is not { } file)
        {
            return false;   // all of it was used up
        }

        using var there = LiveStudio.Empty();
        var imported = there.File.Write(session => StockImport.Into(
            session,
            file.Content,
            new StudioZone(TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna")),
            new NewAct(StockImport.Kind, session.Members.All()[0], "import stock.csv", there.Now)));
        var done = imported as Imported.Done
            ?? throw new InvalidOperationException(string.Join('\n', ((Imported.Refused)imported).Troubles));

        Assert.Equal(file.Content, there.Say("export stock").Reply.File!.Content);
        Assert.Equal(Standing(here), Standing(there));
        Assert.All(there.Look(view => view.Stock.Of(done.By)), line => Assert.Equal(StockReason.Opening, line.Reason));
        Assert.Equal(done.Worth.Cents, here.Look(view => view.Lots.All().Where(IsThere).Sum(lot => lot.Worth.Cents)));
        return true;
    }

    private static bool IsThere(Lot lot) => Chat.Asking.Need.UnitsOf(lot.Left) > 0;

    // Not by way of the table that is tested.
    private static List<string> Standing(LiveStudio studio) => studio.Look(view =>
    {
        var materials = view.Materials.All().ToDictionary(material => material.Id);
        return view.Lots.All().Where(IsThere)
            .Select(lot => $"{lot with { Id = 0, MaterialId = 0 }} {materials[lot.MaterialId].Name} {materials[lot.MaterialId].Form}")
            .Order(StringComparer.Ordinal)
            .ToList();
    });

    private static void Fill(StudioSession session, (string Name, int Form)[] materials, Delivery[] deliveries, DateTimeOffset now)
    {
        var act = session.Acts.Begin(new NewAct("bought", session.Members.All()[0], "bought", now));
        for (var at = 0; at < materials.Length; at++)
        {
            session.Materials.Add(new NewMaterial($"{materials[at].Name}{at}", (MaterialForm)materials[at].Form));
        }

        // The odd ones as often as those that every studio has.
        var all = session.Materials.All();
        List<Material> among = [.. all.Take(4), .. all.TakeLast(materials.Length)];
        for (var at = 0; at < deliveries.Length; at++)
        {
            var came = deliveries[at];
            Come(session, among[came.Material % among.Count], came, came.Label is { } label ? $"{label}{at}" : null, act);
        }
    }

    private static void Come(StudioSession session, Material material, Delivery came, string? label, Booked act)
    {
        var id = session.Stock.Enter(
            new NewLot(material, Of(material, came.Units), act.HappenedAt.AddMilliseconds(-came.Age))
            {
                Label = label,
                Price = came.Cents < 0 ? null : new Money(came.Cents),
            },
            StockReason.Bought,
            act);
        foreach (var share in came.Draws)
        {
            var lot = session.Lots.All().Single(one => one.Id == id);
            var units = Chat.Asking.Need.UnitsOf(lot.Left) * 1000 is var left && material.Form == MaterialForm.Counted
                ? (int)(left / 1000 * share / 1000)
                : (int)(left * share / 1000);
            if (units > 0)
            {
                session.Stock.DrawFrom([lot], material, Of(material, units), StockReason.Used, act);
            }
        }

        if (came.Marks is 1 or 3)
        {
            session.Stock.Opened(id, act);
        }

        if (came.Marks is 2 or 3)
        {
            session.Stock.Stop(id, came.Why, act);
        }
    }

    private static Gen<string> Any(params string[] parts) => Gen.Int[0, parts.Length - 1].Select(at => parts[at]);

    // So many of the book's whole units.
    private static Amount Of(Material material, int units) => material.Form switch
    {
        MaterialForm.Powder => new Amount.ByMass(Mass.FromGrams(units / 1000.0)),
        MaterialForm.Counted => new Amount.ByCount(Math.Min(units, 1_000_000)),
        _ => new Amount.ByVolume(Volume.FromMillilitres(units / 1000.0)),
    };

    private sealed record Delivery(
        int Material, string? Label, int Units, int Cents, long Age, int[] Draws, int Marks, string Why);
}
