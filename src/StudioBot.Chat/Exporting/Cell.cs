using System.Globalization;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Exporting;

/// <summary>One cell of a table.</summary>
/// <param name="Text">What stands in it.</param>
/// <param name="IsTyped">It was written by us from a figure or a moment, so that it needs no shield.</param>
internal readonly record struct Cell(string Text, bool IsTyped)
{
    /// <summary>Nothing.</summary>
    public static Cell Empty { get; } = new("", IsTyped: true);

    /// <summary>What somebody wrote; empty where nobody did.</summary>
    public static Cell Of(string? words) => new(words ?? "", IsTyped: false);

    /// <summary>A whole number; empty where there is none.</summary>
    public static Cell Of(long? number) => new(number?.ToString(CultureInfo.InvariantCulture) ?? "", IsTyped: true);

    /// <summary>24.90; empty where there is none.</summary>
    public static Cell Of(Money? sum) => new(sum?.ToString() ?? "", IsTyped: true);

    /// <summary>In centimetres; empty where there is none.</summary>
    public static Cell Of(Length? length) => Number((decimal?)length?.Centimetres);

    /// <summary>An amount in its own unit, exact to the last that a book holds, less than zero where it came back.
    /// </summary>
    public static Cell Of(Amount amount, bool isLess = false)
    {
        var units = amount switch
        {
            Amount.ByVolume volume => (decimal)volume.Volume.Millilitres,
            Amount.ByMass mass => (decimal)mass.Mass.Grams,
            Amount.ByCount count => count.Count,
            _ => 0,
        };
        return Number(isLess ? -units : units);
    }

    /// <summary>ml, g or piece.</summary>
    public static Cell UnitOf(Amount amount) => new(
        amount switch
        {
            Amount.ByVolume => "ml",
            Amount.ByMass => "g",
            _ => "piece",
        },
        IsTyped: true);

    /// <summary>ISO 8601 with the studio's own offset: 2026-11-25T10:00:00+01:00; empty where there is none.</summary>
    public static Cell Of(DateTimeOffset? moment, StudioZone zone)
    {
        if (moment is not { } at)
        {
            return Empty;
        }

        var local = zone.LocalOf(at);
        return new Cell(
            new DateTimeOffset(DateTime.SpecifyKind(local, DateTimeKind.Unspecified), local - at.UtcDateTime)
                .ToString("yyyy-MM-dd'T'HH:mm:ss.FFFzzz", CultureInfo.InvariantCulture),
            IsTyped: true);
    }

    private static Cell Number(decimal? number) => new(
        number is { } known ? Math.Round(known, 3).ToString("0.###", CultureInfo.InvariantCulture) : "",
        IsTyped: true);
}
