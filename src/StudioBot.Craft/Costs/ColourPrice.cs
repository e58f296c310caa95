using StudioBot.Craft.Units;

namespace StudioBot.Craft.Costs;

/// <summary>What a pigment costs in use: a dose for the same effect counts, not the price of the pack.</summary>
/// <param name="Price">Of one pack.</param>
/// <param name="Pack">What it holds, above zero.</param>
/// <param name="Dose">What the effect takes; by spoon only through the material's own grams a spoon.</param>
/// <param name="Per">In so much paint, above zero.</param>
public sealed record ColourPrice(Money Price, Mass Pack, Mass Dose, Volume Per)
{
    private static readonly Volume Hundred = Volume.FromMillilitres(100);

    /// <summary>A liquid colour: only the share of the pack counts, so its volumes stand as masses at 1 g/mL.</summary>
    /// <param name="price">Of one pack.</param>
    /// <param name="pack">What it holds, above zero.</param>
    /// <param name="dose">What the effect takes.</param>
    /// <param name="per">In so much paint, above zero.</param>
    public static ColourPrice Liquid(Money price, Volume pack, Volume dose, Volume per) =>
        new(price, pack * OfLiquids, dose * OfLiquids, per);

    /// <summary>The density that stands for every liquid here; a break-even dose of one is turned back by it.</summary>
    public static Density OfLiquids { get; } = Density.FromGramsPerMillilitre(1);

    /// <summary>The cost of 100 mL of finished colour, in units of the currency, unrounded.</summary>
    /// <exception cref="InvalidOperationException">The pack or the volume is zero.</exception>
    public decimal PerHundredMillilitres => Pack.Grams > 0 && Per.Millilitres > 0
        ? Price.Sum * (decimal)(Dose / Pack * (Hundred / Per))
        : throw new InvalidOperationException("A pack and the paint it colours are above zero.");

    /// <summary>
    /// The dose of <paramref name="other"/>, in its own volume of paint, at which both cost the same:
    /// dose₁·(p₁/w₁)/(p₂/w₂). Below it the other is cheaper.
    /// </summary>
    /// <returns>No figure when the other costs nothing: then any dose is cheaper.</returns>
    public Finding<Mass> BreakEven(ColourPrice other) => other.Price.Cents > 0
        ? new Finding<Mass>.Found(Mass.FromGrams(
            (double)PerHundredMillilitres * (other.Per / Hundred) * other.Pack.Grams / (double)other.Price.Sum))
        : new Finding<Mass>.None(NoFigure.OutOfRange, "the other costs nothing", "any dose of it is cheaper");
}
