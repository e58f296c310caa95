namespace StudioBot.Craft.Stock;

/// <summary>The level at which to buy, in the material's own unit.</summary>
public static class ReorderPoint
{
    /// <summary>The one to use: for use that comes in lumps, so that a lead time's use is skewed.</summary>
    /// <remarks>
    /// m = d·(L + 1), as an order follows a use and that day counts; s = √((L + 1)·σ_d² + d²·σ_L²), c = s/m:
    /// max(m·(1 − c²/9 + z·c/3)³, m + z·s), the gamma quantile by Wilson–Hilferty (from memory).
    /// </remarks>
    public static double Of(DailyUse use, LeadTime lead, ServiceLevel service)
    {
        var days = lead.Days + 1;
        var mean = use.PerDay * days;
        if (mean <= 0)
        {
            return 0;
        }

        var deviation = Deviation(use, days, lead.Deviation);
        double c = deviation / mean, z = service.Deviations;
        return Math.Max(mean * Math.Pow(1 - c * c / 9 + z * c / 3, 3), mean + z * deviation);
    }

    /// <summary>
    /// The plain form, for use that is even: d·L + z·√(L·σ_d² + d²·σ_L²) (inventory textbooks, from memory).
    /// </summary>
    public static double Plain(DailyUse use, LeadTime lead, ServiceLevel service) =>
        use.PerDay * lead.Days + service.Deviations * Deviation(use, lead.Days, lead.Deviation);

    private static double Deviation(DailyUse use, double days, double leadDeviation) =>
        Math.Sqrt(days * use.Deviation * use.Deviation + Math.Pow(use.PerDay * leadDeviation, 2));
}
