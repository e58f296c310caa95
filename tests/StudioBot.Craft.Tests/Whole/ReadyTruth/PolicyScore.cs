namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>How a policy fared, studio by studio.</summary>
internal sealed class PolicyScore(IReadOnlyList<IReadOnlyList<Outcome>> studios)
{
    private readonly Outcome[] _all = [.. studios.SelectMany(studio => studio)];

    /// <summary>Coated more than half a day before the truth.</summary>
    public Share TooEarly => ShareOf(one => one.IsTooEarly);

    /// <summary>Coated more than 15 % before it.</summary>
    public Share FarTooEarly => ShareOf(one => one.IsFarTooEarly);

    /// <summary>Mean days a piece lay ready and uncoated.</summary>
    public double InVain => _all.Average(one => one.InVain);

    /// <summary>Mean looks a piece.</summary>
    public double Looks => _all.Average(one => (double)one.Looks);

    /// <summary>Pieces that a weight that rose held back from a ping, for how long ever, %.</summary>
    public double HeldBack => 100.0 * _all.Count(one => one.WeighedAgain > 0) / _all.Length;

    /// <summary>For how many evenings, the longest.</summary>
    public int LongestHeldBack => _all.Max(one => one.WeighedAgain);

    /// <summary>How often the 80 % interval held the truth at the first ping, %.</summary>
    public double HeldAtPing
    {
        get
        {
            Outcome[] pinged = [.. _all.Where(one => one.HeldAtPing is not null)];
            return 100.0 * pinged.Count(one => one.HeldAtPing == true) / pinged.Length;
        }
    }

    private Share ShareOf(Func<Outcome, bool> happens)
    {
        double[] percents = [.. studios.Select(studio => 100.0 * studio.Count(happens) / studio.Count)];
        var mean = percents.Average();
        var variance = percents.Sum(one => (one - mean) * (one - mean)) / (percents.Length - 1);
        return new Share(mean, Math.Sqrt(variance / percents.Length));
    }
}
