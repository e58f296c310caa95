namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>How well the pieces' days were told on one day.</summary>
internal sealed class LookScore(IReadOnlyList<FreshLook> looks)
{
    /// <summary>How many pieces.</summary>
    public int Pieces => looks.Count;

    /// <summary>How often the 80 % interval holds the truth, %.</summary>
    public double Holds => Percent(looks, look => look.Holds);

    /// <summary>The same as printed, outward to whole days, %.</summary>
    public double HoldsInWholeDays => Percent(looks, look => look.HoldsInWholeDays);

    /// <summary>The same where the piece was truly not ready yet on this day, %.</summary>
    public double HoldsIfStillWet(int day) => Percent([.. looks.Where(look => look.Ready > day)], look => look.Holds);

    /// <summary>The median width of the interval, days.</summary>
    public double Width => Quantile(0.5, look => look.Width);

    /// <summary>The median distance of the middle from the truth, days.</summary>
    public double Error => Quantile(0.5, look => look.Error);

    /// <summary>The true day of the piece at this share of them all, days.</summary>
    public double Ready(double share) => Quantile(share, look => look.Ready);

    private double Quantile(double share, Func<FreshLook, double> figure) =>
        looks.Select(figure).Order().ElementAt((int)(share * looks.Count));

    private static double Percent(IReadOnlyList<FreshLook> some, Func<FreshLook, bool> holds) =>
        100.0 * some.Count(holds) / some.Count;
}
