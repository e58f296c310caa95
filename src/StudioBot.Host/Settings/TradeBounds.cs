using System.Globalization;

namespace StudioBot.Host.Settings;

/// <summary>Between what a number of the trade is sane, and one that is ordinary.</summary>
internal sealed record TradeBounds(double Low, double High, double Example)
{
    /// <summary>A share of something.</summary>
    public static readonly TradeBounds Share = new(0, 1, 0.2);

    /// <summary>A film of paint or resin, in millimetres.</summary>
    public static readonly TradeBounds FilmMm = new(0.01, 20, 2.5);

    /// <summary>A small measure, in millilitres.</summary>
    public static readonly TradeBounds ToolMl = new(0.1, 100, 5);

    /// <summary>The air of a room, in degrees Celsius.</summary>
    public static readonly TradeBounds RoomC = new(5, 45, 21);

    /// <summary>The density of a liquid or of a powder's grains, in grams per millilitre.</summary>
    public static readonly TradeBounds GramsPerMl = new(0.5, 8, 1.05);

    /// <summary>Whether the number lies inside, ends included.</summary>
    public bool Hold(double number) => number >= Low && number <= High;

    /// <summary>The ordinary one, as it would be written.</summary>
    public string Shown => Text(Example);

    /// <inheritdoc/>
    public override string ToString() => $"{Text(Low)} to {Text(High)}";

    /// <summary>A number as a settings file writes it.</summary>
    public static string Text(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);
}
