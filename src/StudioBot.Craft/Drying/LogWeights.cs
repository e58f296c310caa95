namespace StudioBot.Craft.Drying;

/// <summary>Weights kept as logarithms until they are compared.</summary>
internal static class LogWeights
{
    /// <summary>Turns logarithms, in place, into weights that sum to 1.</summary>
    public static void Normalise(Span<double> logs)
    {
        var most = double.NegativeInfinity;
        foreach (var log in logs)
        {
            most = Math.Max(most, log);
        }

        var sum = 0d;
        for (var i = 0; i < logs.Length; i++)
        {
            logs[i] = Math.Exp(logs[i] - most);
            sum += logs[i];
        }

        for (var i = 0; i < logs.Length; i++)
        {
            logs[i] /= sum;
        }
    }
}
