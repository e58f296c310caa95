using System.Globalization;

namespace StudioBot.Craft.Costs;

/// <summary>A sum in whole cents of the studio's one currency; may be negative, as a debt is.</summary>
public readonly record struct Money(long Cents) : IComparable<Money>
{
    /// <summary>From a sum with at most two places.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It has more than two places.</exception>
    public static Money From(decimal sum) => decimal.Round(sum, 2) == sum
        ? new Money((long)(sum * 100))
        : throw new ArgumentOutOfRangeException(nameof(sum), sum, "Money has two places at most.");

    /// <summary>From a computed cost: rounded once, half away from zero, to whole cents.</summary>
    public static Money Rounded(double sum) =>
        new((long)Math.Round(sum * 100, MidpointRounding.AwayFromZero));

    /// <summary>
    /// Shares by weight that always make the whole: the largest remainder (Hamilton) method in exact integers. A tie
    /// goes to
    /// the earlier member; of a negative sum the absolute is split and the sign restored.
    /// </summary>
    /// <param name="weights">At least one above zero, none below; up to 28 digits each.</param>
    /// <exception cref="ArgumentException">No weight above zero, or one below.</exception>
    public IReadOnlyList<Money> Split(IReadOnlyList<decimal> weights) =>
        [.. LargestRemainder.Split(Cents, weights).Select(cents => new Money(cents))];

    /// <summary>The sum in units of the currency.</summary>
    public decimal Sum => Cents / 100m;

    public static Money operator +(Money left, Money right) => new(left.Cents + right.Cents);

    public static Money operator -(Money left, Money right) => new(left.Cents - right.Cents);

    public static Money operator -(Money sum) => new(-sum.Cents);

    public static bool operator <(Money left, Money right) => left.Cents < right.Cents;

    public static bool operator >(Money left, Money right) => left.Cents > right.Cents;

    public static bool operator <=(Money left, Money right) => left.Cents <= right.Cents;

    public static bool operator >=(Money left, Money right) => left.Cents >= right.Cents;

    /// <inheritdoc/>
    public int CompareTo(Money other) => Cents.CompareTo(other.Cents);

    /// <summary>With two places: 24.90.</summary>
    public override string ToString() => Sum.ToString("0.00", CultureInfo.InvariantCulture);
}
