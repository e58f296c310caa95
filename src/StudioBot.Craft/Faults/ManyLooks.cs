namespace StudioBot.Craft.Faults;

/// <summary>Who looks at many things finds something by chance: what is left of a finding then.</summary>
public static class ManyLooks
{
    /// <summary>The chances corrected for how many there are, in the same order.</summary>
    /// <remarks>Holm's step-down method (Scandinavian Journal of Statistics 6, 1979): the smallest of m is multiplied
    /// by m, the next by m − 1, and so on; none is less than one before it, none more than 1.</remarks>
    /// <param name="chances">Each 0 to 1.</param>
    public static IReadOnlyList<double> Corrected(IReadOnlyList<double> chances)
    {
        var corrected = new double[chances.Count];
        var least = 0.0;
        var left = chances.Count;
        foreach (var at in Enumerable.Range(0, chances.Count).OrderBy(at => chances[at]))
        {
            least = Math.Max(least, Math.Min(1, chances[at] * left--));
            corrected[at] = least;
        }

        return corrected;
    }
}
