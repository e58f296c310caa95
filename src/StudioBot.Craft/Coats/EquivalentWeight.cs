namespace StudioBot.Craft.Coats;

/// <summary>Grams that hold one mole of reacting groups: EEW of an epoxy, AHEW of a hardener.</summary>
public readonly record struct EquivalentWeight
{
    private EquivalentWeight(double gramsPerEquivalent) => GramsPerEquivalent = gramsPerEquivalent > 0
        ? gramsPerEquivalent
        : throw new ArgumentOutOfRangeException(
            nameof(gramsPerEquivalent), gramsPerEquivalent, "An equivalent weight is above zero.");

    /// <summary>What does not react: a filler, a plasticiser. It counts in mass only.</summary>
    public static EquivalentWeight Inert { get; } = new(double.PositiveInfinity);

    /// <summary>In grams an equivalent; infinite for what does not react.</summary>
    public double GramsPerEquivalent { get; }

    /// <summary>From grams an equivalent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above zero, or not a number.</exception>
    public static EquivalentWeight FromGramsPerEquivalent(double value) => new(value);
}
