namespace StudioBot.Craft.Drying;

/// <summary>
/// The grid every ready day is weighed on: 281 equal steps of u = ln X from 0.25 to 250 equivalent days.
/// </summary>
internal static class ReadyGrid
{
    public const int Nodes = 281;

    private static readonly double First = Math.Log(0.25);
    private static readonly double Step = (Math.Log(250) - Math.Log(0.25)) / (Nodes - 1);
    private static readonly double[] AllLogDays = [.. Enumerable.Range(0, Nodes).Select(i => First + i * Step)];
    private static readonly double[] AllDays = [.. AllLogDays.Select(Math.Exp)];

    public static double LogDays(int node) => AllLogDays[node];

    public static double Days(int node) => AllDays[node];

    /// <summary>Where, in u, the weights cumulated to the middle of each node reach a share.</summary>
    public static double Quantile(ReadOnlySpan<double> weights, double share)
    {
        double before = 0, last = 0;
        for (var i = 0; i < Nodes; i++)
        {
            var middle = before + weights[i] / 2;
            if (middle >= share)
            {
                return i == 0 ? AllLogDays[0] : AllLogDays[i] - Step * (middle - share) / (middle - last);
            }

            before += weights[i];
            last = middle;
        }

        return AllLogDays[^1];
    }

    /// <summary>The share of the weight below a u: the inverse of <see cref="Quantile"/>.</summary>
    public static double Below(ReadOnlySpan<double> weights, double logDays)
    {
        if (logDays < AllLogDays[0])
        {
            return 0;
        }

        if (logDays >= AllLogDays[^1])
        {
            return 1;
        }

        var node = Math.Min((int)((logDays - First) / Step), Nodes - 2);
        var middle = weights[node] / 2;
        for (var i = 0; i < node; i++)
        {
            middle += weights[i];
        }

        return middle + (weights[node] + weights[node + 1]) / 2 * (logDays - AllLogDays[node]) / Step;
    }
}
