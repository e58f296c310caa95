using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Amounts of a material as they stand in a line.</summary>
internal static class AmountWords
{
    // Above these nothing stands on a studio's shelf.
    private const double MostMillilitres = 200_000;
    private const double MostGrams = 500_000;

    /// <summary>What these measures are called.</summary>
    public static readonly IReadOnlyCollection<Measure> Measures = [Measure.Volume, Measure.Mass];

    /// <summary>
    /// The amount that begins here, summed over neighbours of one kind (1 L 2 dl), and its atoms; none where none does.
    /// </summary>
    /// <param name="draft">The phrase.</param>
    /// <param name="at">Where.</param>
    /// <param name="isLiquid">Whether an ounce is of a liquid, as far as is known.</param>
    public static (Amount Amount, int Taken)? Read(PhraseDraft draft, int at, bool isLiquid = false)
    {
        if (draft.At(at) is not { } first
            || Flaws.In(draft, at) is not null
            || One(draft, first, isLiquid) is not { } amount)
        {
            return null;
        }

        var taken = 1;
        while (draft.At(at + taken) is { } next
            && IsSmaller(next.Unit, first.Unit!)
            && Flaws.In(draft, at + taken) is null
            && One(draft, next, isLiquid) is { } more)
        {
            amount = Sum(amount, more);
            taken++;
        }

        if (first.Flaw == NumberFlaw.TwoReadings)
        {
            draft.Doubt(at, 1, $"is read as {Say(amount)}");
        }

        return (amount, taken);
    }

    /// <summary>Whether it is more than any shelf holds.</summary>
    public static bool IsAbsurd(Amount amount) => amount switch
    {
        Amount.ByVolume volume => volume.Volume.Millilitres > MostMillilitres,
        Amount.ByMass mass => mass.Mass.Grams > MostGrams,
        Amount.ByCount count => count.Count > 100_000,
        _ => false,
    };

    /// <summary>Whether it is nothing.</summary>
    public static bool IsNothing(Amount amount) => amount switch
    {
        Amount.ByVolume volume => volume.Volume.Millilitres == 0,
        Amount.ByMass mass => mass.Mass.Grams == 0,
        Amount.ByCount count => count.Count == 0,
        _ => false,
    };

    /// <summary>As one would type it: 250 ml, 38 g, 8.</summary>
    public static string Say(Amount amount) => amount switch
    {
        Amount.ByVolume volume => Figures.Of(volume.Volume.Millilitres) + " ml",
        Amount.ByMass mass => Figures.Of(mass.Mass.Grams) + " g",
        Amount.ByCount count => Figures.Of(count.Count),
        _ => "",
    };

    /// <summary>As <c>studiobot read</c> writes it beside a name: 250ml.</summary>
    public static string Glued(Amount amount) => Say(amount).Replace(" ", "", StringComparison.Ordinal);

    /// <summary>By its key: <c>volume_ml</c>, <c>mass_g</c>, <c>pieces</c>.</summary>
    public static Meaning Mean(Amount amount, string what = "")
    {
        return amount switch
        {
            Amount.ByVolume volume => new(Key(what, "volume", "ml"), Figures.Of(volume.Volume.Millilitres)),
            Amount.ByMass mass => new(Key(what, "mass", "g"), Figures.Of(mass.Mass.Grams)),
            Amount.ByCount count => new(what.Length > 0 ? what + "_pieces" : "pieces", Figures.Of(count.Count)),
            _ => new("", ""),
        };
    }

    private static string Key(string what, string otherwise, string unit) =>
        $"{(what.Length > 0 ? what : otherwise)}_{unit}";

    /// <summary>So many times as much.</summary>
    public static Amount Times(Amount amount, int times) => amount switch
    {
        Amount.ByVolume volume => new Amount.ByVolume(volume.Volume * times),
        Amount.ByMass mass => new Amount.ByMass(mass.Mass * times),
        Amount.ByCount count => new Amount.ByCount(count.Count * times),
        _ => amount,
    };

    private static bool IsSmaller(Unit? unit, Unit first) =>
        unit is not null && unit.Measure == first.Measure && unit.Factor < first.Factor;

    private static Amount? One(PhraseDraft draft, Atom atom, bool isLiquid)
    {
        if (atom.Kind != AtomKind.Quantity || atom.Value < 0)
        {
            return null;
        }

        return atom.Unit!.Measure switch
        {
            Measure.Volume when atom.Unit.Name == "scoop" =>
                new Amount.ByVolume(draft.Vocabulary.Scoop * atom.Typed),
            Measure.Volume => new Amount.ByVolume(Volume.FromMillilitres(atom.Value)),
            Measure.Mass => new Amount.ByMass(Mass.FromGrams(atom.Value)),
            Measure.Ounce when isLiquid && draft.Context.Who.Units == UnitSystem.Us =>
                new Amount.ByVolume(Volume.FromUsFluidOunces(atom.Typed)),
            Measure.Ounce when isLiquid && draft.Context.Who.Units == UnitSystem.Imperial =>
                new Amount.ByVolume(Volume.FromImperialFluidOunces(atom.Typed)),
            Measure.Ounce => new Amount.ByMass(Mass.FromGrams(atom.Value)),
            _ => null,
        };
    }

    private static Amount Sum(Amount left, Amount right) => (left, right) switch
    {
        (Amount.ByVolume first, Amount.ByVolume second) => new Amount.ByVolume(first.Volume + second.Volume),
        (Amount.ByMass first, Amount.ByMass second) => new Amount.ByMass(first.Mass + second.Mass),
        _ => left,
    };
}
