using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary>So much of a material, in millilitres, grams or pieces as its form is measured.</summary>
internal sealed record Need(Material Material, double Units)
{
    /// <summary>As an amount; pieces are whole.</summary>
    public Amount Amount => Material.Form switch
    {
        MaterialForm.Powder => new Amount.ByMass(Mass.FromGrams(Units)),
        MaterialForm.Counted => new Amount.ByCount((int)Math.Min(int.MaxValue, Math.Ceiling(Units))),
        _ => new Amount.ByVolume(Volume.FromMillilitres(Units)),
    };

    /// <summary>An amount in its own unit.</summary>
    public static double UnitsOf(Amount amount) => amount switch
    {
        Amount.ByVolume volume => volume.Volume.Millilitres,
        Amount.ByMass mass => mass.Mass.Grams,
        Amount.ByCount count => count.Count,
        _ => 0,
    };
}
