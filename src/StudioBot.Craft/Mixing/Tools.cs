using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>What a studio measures with until it says otherwise (common practice).</summary>
public static class Tools
{
    /// <summary>20 mL.</summary>
    public static Volume Scoop { get; } = UnitNames.Scoop.One;

    /// <summary>5 mL.</summary>
    public static Volume Spoon { get; } = Volume.FromMillilitres(5);

    /// <summary>2.5 mL.</summary>
    public static Volume HalfSpoon { get; } = Volume.FromMillilitres(2.5);

    /// <summary>A syringe's 1 mL.</summary>
    public static Volume Syringe { get; } = Volume.FromMillilitres(1);

    /// <summary>A scale's division of 0.1 g.</summary>
    public static Mass ScaleDivision { get; } = Mass.FromGrams(0.1);
}
