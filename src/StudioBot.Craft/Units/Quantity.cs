namespace StudioBot.Craft.Units;

/// <summary>The one check every quantity makes on its way in.</summary>
internal static class Quantity
{
    /// <summary>The value itself when it is finite and not below <paramref name="lowest"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not a number, infinite, or below.</exception>
    public static double Checked(double value, double lowest, string what) =>
        double.IsFinite(value) && value >= lowest
            ? value
            : throw new ArgumentOutOfRangeException(what, value, $"A {what} is a finite number from {lowest} up.");
}
