using System.Globalization;

namespace StudioBot.Benchmarks;

/// <summary>The figures that must not get worse: what is allocated at all, and those ratios that stayed within 10 % over
/// ten runs by 25 % at most.</summary>
/// <remarks>Where no flush can be counted, none is held.</remarks>
internal static class Held
{
    private const double Worse = 1.25;
    private const string Bytes = "bytes to read and answer";

    private static string Page => Path.Combine(AppContext.BaseDirectory, "held.tsv");

    /// <summary>Measures all that could be held and prints it, a line each.</summary>
    public static async Task Print(TextWriter output)
    {
        foreach (var (name, value) in await Measured(withTimes: true))
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}\t{value:0.####}"));
        }
    }

    /// <summary>Measures and holds it against what stands on the page.</summary>
    /// <returns>Whether nothing got worse.</returns>
    public static async Task<bool> Hold(TextWriter output)
    {
        var measured = await Measured(withTimes: false);
        var holds = true;
        foreach (var line in File.ReadLines(Page).Where(line => line.Length > 0 && line[0] != '#'))
        {
            var (name, text) = (line.Split('\t')[0], line.Split('\t')[1]);
            var (most, now) = (double.Parse(text, CultureInfo.InvariantCulture), measured[name]);
            var isKept = name == Bytes ? now <= most : now <= most * Worse;
            holds &= isKept;
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"held: {name}: {now:0.####} of {most:0.####}{(isKept ? "" : ", WORSE")}"));
        }

        return holds;
    }

    private static async Task<IReadOnlyDictionary<string, double>> Measured(bool withTimes)
    {
        Dictionary<string, double> all = new() { [Bytes] = Functions.Asking(runs: 15).Bytes };
        foreach (var (name, value) in await Goals.Ratios(withTimes))
        {
            all.Add(name, value);
        }

        return all;
    }
}
