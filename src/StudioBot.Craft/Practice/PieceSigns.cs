using StudioBot.Craft.Air;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Practice;

/// <summary>What is on record that can speak for or against a cause; all of it may be unknown.</summary>
/// <remarks>The limits are common practice: between two of them the record is silent.</remarks>
public sealed record PieceSigns
{
    private const double ColdCelsius = 18;
    private const double NotColdCelsius = 20;
    private const double HotCelsius = 27;
    private const double NotHotCelsius = 25;
    private const double DampPercent = ResinAir.BlushPercent;
    private const double NotDampPercent = 60;
    private const int ManyColours = 6;
    private const int FewColours = 4;

    // Grams of mica to a millilitre of the whole mix: alone 0.05 to 0.12.
    private const double MuchPowder = 0.12;
    private const double UsualPowder = 0.10;

    /// <summary>The air of the room it lies in.</summary>
    public RoomAir? Air { get; init; }

    /// <summary>How it was poured.</summary>
    public Technique? Technique { get; init; }

    /// <summary>What was poured over its face, what ran off included.</summary>
    public Length? Poured { get; init; }

    /// <summary>How many colours.</summary>
    public int? Colours { get; init; }

    /// <summary>Powder in a millilitre of the mix.</summary>
    public Density? Powder { get; init; }

    /// <summary>Water's share of the mix by volume, 0 to 1.</summary>
    public double? Water { get; init; }

    /// <summary>The share above which water is much.</summary>
    public required double MostWater { get; init; }

    /// <summary>Whether powders are its only colours.</summary>
    public bool? OnlyPowders { get; init; }

    /// <summary>Whether ceiling paint is in it.</summary>
    public bool? CeilingPaint { get; init; }

    /// <summary>What these records say of a cause with this sign.</summary>
    public SignVerdict Of(CauseSign sign) => sign switch
    {
        CauseSign.ColdRoom => Below(Air?.Temperature.Celsius, ColdCelsius, NotColdCelsius),
        CauseSign.HotRoom => Above(Air?.Temperature.Celsius, HotCelsius, NotHotCelsius),
        CauseSign.DampRoom => Above(Air?.Humidity.Percent, DampPercent, NotDampPercent),
        CauseSign.ThickFilm => Above(Poured?.Millimetres, Film(High)?.Millimetres, Film(Usual)?.Millimetres),
        CauseSign.ThinFilm => Below(Poured?.Millimetres, Film(Low)?.Millimetres, Film(Usual)?.Millimetres),
        CauseSign.ManyColours => Above(Colours, ManyColours, FewColours),
        CauseSign.MuchPigment => Above(Powder?.GramsPerMillilitre, MuchPowder, UsualPowder),
        CauseSign.MuchWater => Above(Water, MostWater, MostWater / 2),
        CauseSign.OnlyPowders => If(OnlyPowders),
        CauseSign.CeilingPaint => If(CeilingPaint),
        // A technique with an activator does not say that one was used.
        CauseSign.NoActivator => Technique?.Share(LayerKind.Activator) <= 0 ? SignVerdict.For : SignVerdict.Silent,
        _ => SignVerdict.Silent,
    };

    private static SignVerdict Above(double? figure, double? much, double? usual) =>
        figure >= much ? SignVerdict.For : figure <= usual ? SignVerdict.Against : SignVerdict.Silent;

    private static SignVerdict Below(double? figure, double? little, double? usual) =>
        figure < little ? SignVerdict.For : figure >= usual ? SignVerdict.Against : SignVerdict.Silent;

    private static SignVerdict If(bool? so) => so switch
    {
        true => SignVerdict.For,
        false => SignVerdict.Against,
        _ => SignVerdict.Silent,
    };

    private static Length Low(Technique technique) => technique.Laid.Low * (1 + technique.RunOffLow);

    private static Length Usual(Technique technique) => technique.Laid.Usual * (1 + technique.RunOff);

    private static Length High(Technique technique) => technique.Laid.High * (1 + technique.RunOffHigh);

    private Length? Film(Func<Technique, Length> of) => Technique is null ? null : of(Technique);
}
