namespace StudioBot.Craft.Faults;

/// <summary>How often a fault came with something, and how often without it.</summary>
/// <param name="FaultyWith">Pieces with it that have the fault; 0 or more, as all of them.</param>
/// <param name="SoundWith">Pieces with it that have not.</param>
/// <param name="FaultyWithout">Pieces without it that have the fault.</param>
/// <param name="SoundWithout">Pieces without it that have not.</param>
public sealed record FaultTable(int FaultyWith, int SoundWith, int FaultyWithout, int SoundWithout)
{
    /// <summary>How many pieces had it.</summary>
    public int With => FaultyWith + SoundWith;

    /// <summary>How many had not.</summary>
    public int Without => FaultyWithout + SoundWithout;

    /// <summary>How likely chance alone brings as many faults together with it, or more, 0 to 1.</summary>
    /// <remarks>Fisher's exact test, one-sided: the hypergeometric tail, Σ C(with, k)·C(without, faulty − k)/C(all,
    /// faulty) from the number seen upwards. Exact for any count (R. A. Fisher, The Design of Experiments, 1935,
    /// chapter 2).</remarks>
    public double ByChance
    {
        get
        {
            var faulty = FaultyWith + FaultyWithout;
            var all = LogChoose(With + Without, faulty);
            var sum = 0.0;
            for (var k = FaultyWith; k <= Math.Min(With, faulty); k++)
            {
                if (faulty - k <= Without)
                {
                    sum += Math.Exp(LogChoose(With, k) + LogChoose(Without, faulty - k) - all);
                }
            }

            return Math.Min(1, sum);
        }
    }

    private static double LogChoose(int n, int k) => LogFactorial(n) - LogFactorial(k) - LogFactorial(n - k);

    private static double LogFactorial(int n)
    {
        var sum = 0.0;
        for (var factor = 2; factor <= n; factor++)
        {
            sum += Math.Log(factor);
        }

        return sum;
    }
}
