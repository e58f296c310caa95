using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Records.Sample;

/// <summary>What the invented studio has on its shelves. Densities, solids and spoons are common practice.</summary>
internal static class SampleMaterials
{
    public static Dictionary<string, Material> WriteInto(StudioSession session, Act act)
    {
        var materials = All().Select(material => session.Materials.Add(material))
            .ToDictionary(material => material.Name);
        foreach (var (name, label, month, day, price, bought, left) in Deliveries)
        {
            var material = materials[name];
            var lot = new NewLot(material, Measured(material.Form, bought), SampleTime.At(month, day, 11))
            {
                Label = label,
                Price = price is { } sum ? Money.From(sum) : null,
                Left = Measured(material.Form, left),
            };
            session.Stock.Enter(lot, StockReason.Opening, act);
        }

        return materials;
    }

    private static IEnumerable<NewMaterial> All() =>
    [
        Liquid("white", 1.30, 0.55, 300, (500, 9.90m), (1000, 17.50m)),
        Liquid("lamp black", 1.10, 0.45, 150, (250, 6.40m), (500, 10.90m)),
        Liquid("ultramarine", 1.15, 0.48, 150, (250, 7.80m)),
        Liquid("magenta", 1.10, 0.45, 150, (250, 8.20m)),
        Liquid("ochre", 1.25, 0.52, 100, (250, 6.90m)),
        Mica("blue mica"),
        Mica("gold mica"),
        Mica("silver mica"),
        Mica("copper mica"),
        Liquid("neutral base", 1.05, 0.46, 1000, (1000, 13.50m), (2500, 29.90m)),
        Liquid("gloss varnish", 1.03, 0.38, 400, (1000, 16.80m)),
        Liquid("flow extender", 1.02, 0.10, 100, (500, 7.90m)),
        Liquid("thinner", 1.00, 0.05, 200, (500, 5.40m)),
        Liquid("isopropyl", 0.79, 0, 250, (1000, 8.50m)),
        Resin("resin A", MaterialForm.ResinA, 1.13, 1000),
        Resin("hardener B", MaterialForm.HardenerB, 0.98, 500),
        Liquid("wall paint", 1.40, 0.55, 1500, (2500, 24.90m), (5000, 42.00m)),
        Counted("tile 10cm", 10, (20, 19.00m), (40, 36.00m)),
        Counted("cup", 30, (100, 8.90m)),
        Counted("glove", 20, (100, 12.50m)),
        Mixture("medium", 1.045, 0.44, 400),
        Mixture("activator", 1.244, 0.47, 50),
    ];

    private static readonly (string, string?, int, int, decimal?, double, double)[] Deliveries =
    [
        ("white", "W-1", 9, 14, 17.50m, 1000, 40),
        ("white", "W-2", 11, 9, 17.50m, 1000, 780),
        ("lamp black", "K-4", 10, 12, 10.90m, 500, 310),
        ("ultramarine", "U-3", 10, 12, 15.60m, 500, 265),
        ("magenta", "G-2", 10, 26, 8.20m, 250, 140),
        ("ochre", "O-1", 9, 14, 6.90m, 250, 85),
        ("blue mica", null, 10, 5, 17.90m, 100, 46),
        ("gold mica", null, 10, 5, 18.90m, 100, 38),
        ("silver mica", null, 10, 5, 9.50m, 50, 31.5),
        ("copper mica", null, 11, 2, 9.90m, 50, 42),
        ("neutral base", "N-5", 11, 2, 59.80m, 5000, 2150),
        ("gloss varnish", "V-3", 11, 2, 33.60m, 2000, 930),
        ("flow extender", "F-1", 9, 14, 7.90m, 500, 360),
        ("thinner", "T-2", 9, 14, 5.40m, 500, 410),
        ("isopropyl", null, 10, 12, 8.50m, 1000, 640),
        ("resin A", "R-2", 9, 21, 32.00m, 1000, 120),
        ("resin A", "R-3", 11, 16, 58.00m, 2000, 2000),
        ("hardener B", "H-11", 9, 21, 18.00m, 500, 60),
        ("hardener B", "H-12", 11, 16, 32.00m, 1000, 1000),
        ("wall paint", "P-1", 10, 19, 24.90m, 2500, 1700),
        ("tile 10cm", null, 10, 26, 36.00m, 40, 26),
        ("cup", null, 10, 5, 17.80m, 200, 88),
        ("glove", null, 11, 2, 12.50m, 100, 64),
        ("medium", "M-6", 11, 16, null, 800, 90),
        ("medium", "M-7", 11, 21, null, 1200, 860),
        ("activator", "A-2", 11, 18, null, 100, 70),
    ];

    private static NewMaterial Liquid(
        string name, double density, double solids, double low, params (double Size, decimal Price)[] packs) =>
        new(name, MaterialForm.Liquid)
        {
            Density = Density.FromGramsPerMillilitre(density),
            SolidsShare = solids,
            Low = Measured(MaterialForm.Liquid, low),
            Packs = Sold(MaterialForm.Liquid, packs),
        };

    // 2.8 g/mL are the grains; a level teaspoon of them lies loose, at about 0.45 g/mL.
    private static NewMaterial Mica(string name) => new(name, MaterialForm.Powder)
    {
        Density = Density.FromGramsPerMillilitre(2.8),
        GramsPerTeaspoon = Mass.FromGrams(2.2),
        SolidsShare = 1,
        Low = Measured(MaterialForm.Powder, 20),
        Packs = Sold(MaterialForm.Powder, [(10, 5.50m), (50, 18.00m)]),
    };

    private static NewMaterial Mixture(string name, double density, double solids, double low) =>
        new(name, MaterialForm.Mixture)
        {
            Density = Density.FromGramsPerMillilitre(density),
            SolidsShare = solids,
            Low = Measured(MaterialForm.Mixture, low),
        };

    private static NewMaterial Resin(string name, MaterialForm form, double density, double size) => new(name, form)
    {
        Density = Density.FromGramsPerMillilitre(density),
        SolidsShare = 1,
        Low = Measured(form, size / 2),
        Packs = Sold(form, [(size, form == MaterialForm.ResinA ? 32.00m : 18.00m)]),
    };

    private static NewMaterial Counted(string name, int low, params (double Size, decimal Price)[] packs) =>
        new(name, MaterialForm.Counted)
        {
            Low = Measured(MaterialForm.Counted, low),
            Packs = Sold(MaterialForm.Counted, packs),
        };

    private static IReadOnlyList<Pack> Sold(MaterialForm form, (double Size, decimal Price)[] packs) =>
        [.. packs.Select(pack => new Pack(Measured(form, pack.Size), Money.From(pack.Price)))];

    private static Amount Measured(MaterialForm form, double size) => form switch
    {
        MaterialForm.Powder => new Amount.ByMass(Mass.FromGrams(size)),
        MaterialForm.Counted => new Amount.ByCount((int)size),
        _ => new Amount.ByVolume(Volume.FromMillilitres(size)),
    };
}
