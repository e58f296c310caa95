namespace StudioBot.Craft.Costs;

/// <summary>A price on a cost; tax comes last and apart.</summary>
/// <param name="Cost">What it cost.</param>
/// <param name="Price">What is asked for it, before tax.</param>
public sealed record Quote(Money Cost, Money Price)
{
    /// <summary>What is left, as a share of the cost; null on a cost of zero.</summary>
    public decimal? Markup => Cost.Cents == 0 ? null : (Price - Cost).Cents / (decimal)Cost.Cents;

    /// <summary>What is left, as a share of the price; null on a price of zero.</summary>
    public decimal? Margin => Price.Cents == 0 ? null : (Price - Cost).Cents / (decimal)Price.Cents;

    /// <summary>Cost·(1 + markup): 50 % markup is 33 % margin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The markup is below zero.</exception>
    public static Quote ByMarkup(Money cost, decimal markup) => markup >= 0
        ? new Quote(cost, Cents(cost.Cents * (1 + markup)))
        : throw new ArgumentOutOfRangeException(nameof(markup), markup, "A markup is zero or more.");

    /// <summary>Cost/(1 − margin).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The margin is outside 0 to below 1.</exception>
    public static Quote ByMargin(Money cost, decimal margin) => margin is >= 0 and < 1
        ? new Quote(cost, Cents(cost.Cents / (1 - margin)))
        : throw new ArgumentOutOfRangeException(nameof(margin), margin, "A margin is from 0 to below 1.");

    /// <summary>The tax on top of the price, as a share of it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is below zero.</exception>
    public Money Tax(decimal rate) => rate >= 0
        ? Cents(Price.Cents * rate)
        : throw new ArgumentOutOfRangeException(nameof(rate), rate, "A tax rate is zero or more.");

    private static Money Cents(decimal cents) => new((long)decimal.Round(cents, MidpointRounding.AwayFromZero));
}
