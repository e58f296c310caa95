using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.House;

/// <summary>A studio as it begins: what the trade knows of materials, two mixtures, two rooms, three racks; nothing on
/// the shelf yet.</summary>
public static class NewStudio
{
    private const double MediumBatch = 400;
    private const int Places = 4;

    // Counted supplies that every studio has.
    private static readonly string[] Supplies = ["tile 10cm", "cup", "glove"];

    /// <summary>Writes it into an empty file.</summary>
    /// <param name="session">Where.</param>
    /// <param name="practice">What the trade assumes.</param>
    /// <param name="zone">The name of its time zone.</param>
    /// <param name="at">When it begins.</param>
    /// <exception cref="InvalidOperationException">A studio is there already.</exception>
    public static void WriteInto(StudioSession session, TradePractice practice, string zone, DateTimeOffset at)
    {
        if (session.Studio.Settings() is { } there)
        {
            throw new InvalidOperationException($"“{there.Name}” is here already.");
        }

        session.Studio.Change(new StudioSettings(
            "Our studio", zone, "EUR", UnitSystem.Metric, practice.Pours.Tools.Scoop.Value));
        var act = session.Acts.Begin(new NewAct(ActRecords.Opening, null, "opening", at));
        var materials = practice.Materials.Select(Known).Concat(Supplies.Select(name =>
                new NewMaterial(name, MaterialForm.Counted)))
            .Select(material => session.Materials.Add(material, act))
            .ToDictionary(material => material.Name);
        Mix(session, practice, materials, act);
        var studio = session.Rooms.Add("studio", act);
        var cupboard = session.Rooms.Add("cupboard", act);
        foreach (var rack in "ABC")
        {
            for (var place = 1; place <= Places; place++)
            {
                session.Rooms.AddShelf($"{rack}{place}", rack == 'C' ? cupboard : studio, act);
            }
        }
    }

    private static NewMaterial Known(StarterMaterial starter) => new(starter.Name, FormOf(starter))
    {
        Density = starter.Density?.Value,
        GramsPerTeaspoon = starter.GramsPerTeaspoon?.Value,
        SolidsShare = starter.Solids?.Value,
    };

    private static MaterialForm FormOf(StarterMaterial starter) => starter.Kind switch
    {
        _ when starter.Name is "medium" or "activator" => MaterialForm.Mixture,
        MaterialKind.Powder => MaterialForm.Powder,
        MaterialKind.PartA => MaterialForm.ResinA,
        MaterialKind.PartB => MaterialForm.HardenerB,
        MaterialKind.Supply => MaterialForm.Counted,
        _ => MaterialForm.Liquid,
    };

    // The two mixtures every studio makes, where the trade's values name their parts.
    private static void Mix(
        StudioSession session, TradePractice practice, Dictionary<string, Material> materials, Act act)
    {
        var ratio = practice.Pours.MediumRatio.Value;
        var whole = ratio.Parts.Sum();
        Add("medium", ("neutral base", ratio.Parts[0] / whole), ("gloss varnish", ratio.Parts[1] / whole));
        Add("activator", ("white", 0.8), ("flow extender", 0.2));

        void Add(string name, params (string Material, double Share)[] parts)
        {
            if (materials.TryGetValue(name, out var makes) && parts.All(part => materials.ContainsKey(part.Material)))
            {
                session.Recipes.Add(
                    name,
                    [.. parts.Select(part => Part.Of(
                        materials[part.Material],
                        new Amount.ByVolume(Volume.FromMillilitres(MediumBatch * part.Share))))],
                    makes,
                    act);
            }
        }
    }
}
