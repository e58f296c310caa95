namespace StudioBot.Chat.Pictures;

/// <summary>One axis of a chart: from figures to pixels.</summary>
/// <param name="From">The figure at the first pixel.</param>
/// <param name="To">The figure at the last one, another than the first.</param>
/// <param name="First">The first pixel.</param>
/// <param name="Last">The last one; below the first where figures grow upwards.</param>
internal sealed record Scale(double From, double To, float First, float Last)
{
    private static readonly double[] Rounds = [1, 2, 5, 10];
    private static readonly int[] Days = [1, 2, 3, 7, 14, 28, 56, 112, 364, 728, 3640];

    /// <summary>Where a figure stands.</summary>
    public float Pixel(double figure) => (float)(First + (figure - From) / (To - From) * (Last - First));

    /// <summary>Round figures along the axis, at least so many pixels apart.</summary>
    public IEnumerable<double> Round(float apart)
    {
        var least = apart / Math.Abs(Last - First) * (To - From);
        var ten = Math.Pow(10, Math.Floor(Math.Log10(least)));
        var step = Rounds.First(round => round * ten >= least * (1 - 1e-9)) * ten;
        return Every(step);
    }

    /// <summary>Days along an axis of days, at least so many pixels apart.</summary>
    public IEnumerable<double> RoundDays(float apart)
    {
        var least = apart / Math.Abs(Last - First) * (To - From);
        return Every(Days.FirstOrDefault(day => day >= least, Days[^1]));
    }

    private IEnumerable<double> Every(double step)
    {
        for (var at = Math.Ceiling(From / step - 1e-9); at * step <= To; at++)
        {
            yield return at * step;
        }
    }
}
