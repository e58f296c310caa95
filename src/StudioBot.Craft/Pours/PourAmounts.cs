using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>What to mix for a pour.</summary>
/// <param name="Technique">How it is poured; its layers share the need as their films stand to each other.</param>
/// <param name="Colours">How many colours; 1 or more.</param>
/// <param name="Laid">What stays on the faces.</param>
/// <param name="OnSides">What stays on sides whose depth was given; nothing otherwise: run-off then covers
/// them.</param>
/// <param name="RunOff">What flows over the rim.</param>
/// <param name="Low">The low end of <see cref="TotalMixed"/>.</param>
/// <param name="High">The high end of <see cref="TotalMixed"/>.</param>
public sealed record PourAmounts(
    Technique Technique, int Colours, Volume Laid, Volume OnSides, Volume RunOff, Volume Low, Volume High)
{
    // A normal 80 % interval: one time in ten below it, one above.
    private const double EightyPercent = 1.2816;

    /// <summary>What stays in an emptied cup, 3 mL (common practice).</summary>
    public static Volume WasteOfACup { get; } = Volume.FromMillilitres(3);

    /// <summary>What has to leave the cups.</summary>
    public Volume Need => Laid + OnSides + RunOff;

    /// <summary>The base coat or pillow; nothing for a technique without one.</summary>
    public Volume Base => Of(LayerKind.Base);

    /// <summary>All colours together.</summary>
    public Volume AllColours => Of(LayerKind.Colours);

    /// <summary>Each of the colours, in equal shares.</summary>
    public Volume PerColour => AllColours / Colours;

    /// <summary>The cell activator or swiped coat; nothing for a technique without one.</summary>
    public Volume Activator => Of(LayerKind.Activator);

    /// <summary>One for the base, one for the activator, one a colour; as far as the technique has them.</summary>
    public int Cups => CupsOf(Technique, Colours);

    /// <summary>What stays in the cups, on top of the need.</summary>
    public Volume CupWaste => Cups * WasteOfACup;

    /// <summary>What to mix: the need and what stays in the cups.</summary>
    public Volume TotalMixed => Need + CupWaste;

    /// <summary>From the technique alone: V = A·film·(1 + run-off), the run-off scaled to each surface's rim.</summary>
    /// <remarks>The range runs from the thin film with little run-off to the thick one with much.</remarks>
    /// <param name="technique">How it is poured.</param>
    /// <param name="surfaces">What is poured on; a depth adds its sides under <paramref name="onSides"/>.</param>
    /// <param name="colours">1 or more.</param>
    /// <param name="onSides">The film on the sides; <see cref="FilmVolume.PouredSides"/> where none is given.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one colour.</exception>
    public static PourAmounts For(Technique technique, SurfaceSet surfaces, int colours, Length? onSides = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(colours, 1);
        var sides = surfaces.Sides * (onSides ?? FilmVolume.PouredSides);
        var fixedPart = sides + CupsOf(technique, colours) * WasteOfACup;
        return new PourAmounts(
            technique,
            colours,
            surfaces.Faces * technique.Laid.Usual,
            sides,
            Over(surfaces, technique.Laid.Usual, technique.RunOff),
            Whole(technique.Laid.Low, technique.RunOffLow),
            Whole(technique.Laid.High, technique.RunOffHigh));

        Volume Whole(Length film, double runOff) => surfaces.Faces * film + Over(surfaces, film, runOff) + fixedPart;
    }

    /// <summary>From the studio's own pours: enough four times of five; the range is where four of five end.</summary>
    /// <remarks>Sides are inside a need that was learnt. Film and run-off come apart by the technique's
    /// run-off.</remarks>
    /// <param name="technique">How it is poured.</param>
    /// <param name="surfaces">What is poured on.</param>
    /// <param name="colours">1 or more.</param>
    /// <param name="learnt">The need per face that the studio's pours tell of.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one colour.</exception>
    public static PourAmounts For(Technique technique, SurfaceSet surfaces, int colours, FilmEstimate learnt)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(colours, 1);
        var waste = CupsOf(technique, colours) * WasteOfACup;
        var need = surfaces.Faces * learnt.EnoughFourTimesOfFive;
        var laid = surfaces.Faces * technique.Laid.Usual;
        var over = Over(surfaces, technique.Laid.Usual, technique.RunOff);
        return new PourAmounts(
            technique,
            colours,
            need * (laid / (laid + over)),
            default,
            need * (over / (laid + over)),
            surfaces.Faces * learnt.At(-EightyPercent) + waste,
            surfaces.Faces * learnt.At(EightyPercent) + waste);
    }

    private static Volume Over(SurfaceSet surfaces, Length film, double runOff) => surfaces.Groups.Aggregate(
        default(Volume),
        (sum, group) => sum + group.Count * (group.Surface.Face * film * Pours.RunOff.On(group.Surface, runOff)));

    private static int CupsOf(Technique technique, int colours) =>
        (technique.Share(LayerKind.Base) > 0 ? 1 : 0)
        + (technique.Share(LayerKind.Activator) > 0 ? 1 : 0)
        + (technique.Share(LayerKind.Colours) > 0 ? colours : 0);

    private Volume Of(LayerKind kind) => Need * Technique.Share(kind);
}
