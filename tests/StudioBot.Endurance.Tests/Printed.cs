using System.Globalization;
using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>What a run is set to by its surroundings, and what it prints: beside the test and on the console.</summary>
internal static class Printed
{
    /// <summary>The figure of this variable; this one where it is none.</summary>
    public static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var value) ? value : otherwise;

    /// <summary>Prints one line.</summary>
    public static void Print(this ITestOutputHelper output, FormattableString line)
    {
        var words = line.ToString(CultureInfo.InvariantCulture);
        output.WriteLine(words);
        Console.WriteLine(words);
    }
}
