using System.Globalization;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Replies;

/// <summary>
/// Figures for the eye: as many digits as tools can measure, a plain space before the unit, readable back.
/// </summary>
internal static class Show
{
    // At most so many decimals.
    private static readonly string[] Formats = ["0", .. Enumerable.Range(1, 15).Select(most => $"0.{new('#', most)}")];

    /// <summary>A number with at most so many decimals, 15 at most, no groups, a point.</summary>
    public static string Number(double value, int decimals = 1) =>
        Math.Round(value, decimals, MidpointRounding.AwayFromZero)
            .ToString(Formats[decimals], CultureInfo.InvariantCulture);

    /// <summary>212.1 ml, 1440 ml.</summary>
    public static string Volume(Volume volume) => Number(volume.Millilitres, volume.Millilitres < 1000 ? 1 : 0) + " ml";

    /// <summary>What to measure out: whole millilitres up to 30, then steps of 5.</summary>
    public static string ToMeasure(Volume volume) => Number(Measurable(volume).Millilitres, 0) + " ml";

    /// <summary>Rounded up to what a cup with marks can measure: 1 mL up to 30, then 5.</summary>
    public static Volume Measurable(Volume volume)
    {
        var step = volume.Millilitres <= 30 ? 1 : 5;
        return Craft.Units.Volume.FromMillilitres(Math.Ceiling(Math.Round(volume.Millilitres / step, 6)) * step);
    }

    /// <summary>318.4 g, 1.20 kg from ten kilograms up.</summary>
    public static string Mass(Mass mass) =>
        mass.Grams < 10_000 ? Number(mass.Grams) + " g" : Number(mass.Kilograms, 2) + " kg";

    /// <summary>200.0 g, as a scale of 0.1 g shows it.</summary>
    public static string OnScale(Mass mass) => mass.Grams.ToString("0.0", CultureInfo.InvariantCulture) + " g";

    /// <summary>Four digits that count, at most six decimals: 236.6, 4.058, 0.001234.</summary>
    public static string Significant(double value) => Number(value, value == 0 ? 0
        : Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6));

    /// <summary>An amount as its form is measured.</summary>
    public static string Amount(Amount amount) => amount switch
    {
        Records.Materials.Amount.ByVolume volume => Volume(volume.Volume),
        Records.Materials.Amount.ByMass mass => Mass(mass.Mass),
        Records.Materials.Amount.ByCount count => count.Count.ToString(CultureInfo.InvariantCulture),
        _ => "",
    };

    /// <summary>900 cm².</summary>
    public static string Area(Area area) =>
        Number(area.SquareCentimetres, area.SquareCentimetres < 1000 ? 1 : 0) + " cm²";

    /// <summary>2.5 mm.</summary>
    public static string Film(Length film) => Number(film.Millimetres, 2) + " mm";

    /// <summary>13.8 °C.</summary>
    public static string Degrees(Temperature temperature) => Number(temperature.Celsius) + " °C";

    /// <summary>20 %.</summary>
    public static string Share(double share) => Number(share * 100, 0) + " %";

    /// <summary>29 min, 5.5 h, 3 days.</summary>
    public static string Time(TimeSpan time) => time.TotalMinutes < 1 ? Number(time.TotalSeconds, 0) + " s"
        : time.TotalHours < 2 ? Number(time.TotalMinutes, 0) + " min"
        : time.TotalHours < 48 ? Number(time.TotalHours) + " h"
        : Number(time.TotalDays) + " days";

    /// <summary>28 Nov.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);

    /// <summary>today 14:10, Thu 14:10 within six days, else 3 Dec 14:10, on the studio's wall.</summary>
    public static string Moment(DateTimeOffset moment, Turn turn)
    {
        var (at, today) = (turn.Zone.LocalOf(moment), turn.Zone.LocalOf(turn.Now).Date);
        var day = at.Date == today ? "today"
            : Math.Abs((at.Date - today).Days) < 7 ? at.ToString("ddd", CultureInfo.InvariantCulture)
            : Date(DateOnly.FromDateTime(at), turn);
        return $"{day} {Clock(moment, turn)}";
    }

    /// <summary>14:10, on the studio's wall.</summary>
    public static string Clock(DateTimeOffset moment, Turn turn) =>
        turn.Zone.LocalOf(moment).ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>28 Nov, 28 Jun 2027 in another year than this one.</summary>
    public static string Date(DateOnly day, Turn turn) =>
        Day(day) + (day.Year == turn.Zone.LocalOf(turn.Now).Year
            ? ""
            : " " + day.Year.ToString(CultureInfo.InvariantCulture));

    /// <summary>1 panel, 30 × 30 cm; what was read, with its area.</summary>
    public static string Surfaces(SurfaceSet surfaces) =>
        string.Join(" + ", surfaces.Groups.Select(group => $"{group.Count} {Surface(group.Surface, group.Count > 1)}"))
        + (surfaces.Depth is { } depth ? $", {Number(depth.Centimetres)} cm deep" : "");

    private static string Surface(Surface surface, bool isMany)
    {
        var s = isMany ? "s" : "";
        return surface switch
        {
            Craft.Surfaces.Surface.Panel panel =>
                $"panel{s} {Number(panel.Width.Centimetres)} × {Number(panel.Height.Centimetres)} cm",
            Craft.Surfaces.Surface.Disc disc => $"round{s} {Number(disc.Diameter.Centimetres)} cm",
            Craft.Surfaces.Surface.Oval oval =>
                $"oval{s} {Number(oval.Width.Centimetres)} × {Number(oval.Height.Centimetres)} cm",
            Craft.Surfaces.Surface.Hexagon hexagon =>
                $"hexagon{s} {Number(hexagon.AcrossFlats.Centimetres)} cm across flats",
            _ => "",
        };
    }
}
