using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>How steeply a reaction quickens with warmth.</summary>
public readonly record struct ActivationEnergy
{
    private const double GasConstant = 8.314462618e-3;  // kJ/(mol·K)

    private ActivationEnergy(double kilojoulesPerMole) =>
        KilojoulesPerMole = Quantity.Checked(kilojoulesPerMole, 0, nameof(ActivationEnergy));

    /// <summary>The middle of the band that amine-cured epoxy is taken to have: 55 kJ/mol.</summary>
    public static ActivationEnergy Usual { get; } = new(55);

    /// <summary>The low end of the band: 50 kJ/mol. DGEBA with ethylenediamine measures 58.6 (DSC abstracts).</summary>
    public static ActivationEnergy Low { get; } = new(50);

    /// <summary>The high end: 60 kJ/mol.</summary>
    public static ActivationEnergy High { get; } = new(60);

    /// <summary>In kilojoules a mole.</summary>
    public double KilojoulesPerMole { get; }

    /// <summary>From kilojoules a mole.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, infinite or negative.</exception>
    public static ActivationEnergy FromKilojoulesPerMole(double value) => new(value);

    /// <summary>The energy at which so many degrees more make it twice as fast: R·ln 2/(1/T − 1/(T + step)).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above zero.</exception>
    public static ActivationEnergy ForDoubling(Temperature from, double stepDegrees) => stepDegrees > 0
        ? new(GasConstant * Math.Log(2) / (1 / from.Kelvin - 1 / (from.Kelvin + stepDegrees)))
        : throw new ArgumentOutOfRangeException(nameof(stepDegrees), stepDegrees, "A step is above zero.");

    /// <summary>How many times as fast as at the reference: exp(E/R·(1/T_ref − 1/T)), Arrhenius.</summary>
    public double Speed(Temperature at, Temperature reference) =>
        Math.Exp(KilojoulesPerMole / GasConstant * (1 / reference.Kelvin - 1 / at.Kelvin));
}
