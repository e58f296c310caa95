namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>
/// Chance that is the same on every machine and for any number of threads: each studio has dice of its own.
/// </summary>
/// <remarks>SplitMix64 (Steele, Lea, Flood 2014; from memory); normals by Box and Muller.</remarks>
internal sealed class Dice
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    private ulong _state;

    /// <summary>The dice of this studio in this run.</summary>
    public Dice(int seed, int studio) => _state = Mixed(Mixed((uint)seed) + (uint)studio);

    /// <summary>Evenly from one to the other.</summary>
    public double Between(double from, double to) => from + (to - from) * Next();

    /// <summary>One of them, each as likely.</summary>
    public T OneOf<T>(IReadOnlyList<T> all) => all[(int)(Next() * all.Count)];

    /// <summary>Whether something of this probability happens.</summary>
    public bool Happens(double probability) => Next() < probability;

    /// <summary>About nought with this standard deviation.</summary>
    public double About(double deviation) =>
        deviation * Math.Sqrt(-2 * Math.Log(1 - Next())) * Math.Cos(2 * Math.PI * Next());

    private static ulong Mixed(ulong value)
    {
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EB;
        return value ^ (value >> 31);
    }

    private double Next()
    {
        _state += Golden;
        return (Mixed(_state) >> 11) / (double)(1UL << 53);
    }
}
