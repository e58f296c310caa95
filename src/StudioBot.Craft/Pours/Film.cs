using System.Globalization;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>What a logged pour says about film and run-off: mass balances over the face.</summary>
public static class Film
{
    private const string Slip = "Is one of the amounts a typing slip?";

    /// <summary>No pour lies thinner: less is a slip of typing.</summary>
    public static Length Thinnest { get; } = Length.FromMillimetres(0.3);

    /// <summary>None lies thicker: more is a slip of typing.</summary>
    public static Length Thickest { get; } = Length.FromMillimetres(12);

    /// <summary>What a pour took per face, run-off included: (mixed − left)/A.</summary>
    /// <returns>Out of range outside 0.3–12 mm, which is taken for a typing slip, or where more is left than was
    /// mixed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no face.</exception>
    public static Finding<Length> Need(Volume mixed, Volume left, Area face) => Spread(mixed, left, face);

    /// <summary>What stayed on the face, where the tray was weighed or measured: (mixed − left − caught)/A.</summary>
    /// <returns>Out of range as for the need.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no face.</exception>
    public static Finding<Length> Laid(Volume mixed, Volume left, Volume caught, Area face) =>
        Spread(mixed, left + caught, face);

    /// <summary>What ran off, as a fraction of what was laid: caught/(mixed − left − caught).</summary>
    /// <returns>Out of range where nothing stayed on the face.</returns>
    public static Finding<double> RunOff(Volume mixed, Volume left, Volume caught) => left + caught < mixed
        ? new Finding<double>.Found(caught.Millilitres / (mixed.Millilitres - left.Millilitres - caught.Millilitres))
        : new Finding<double>.None(NoFigure.OutOfRange, "nothing would have stayed on the face", Slip);

    private static Finding<Length> Spread(Volume mixed, Volume gone, Area face)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(face, default);
        if (gone > mixed)
        {
            return new Finding<Length>.None(NoFigure.OutOfRange, "more is left than was mixed", Slip);
        }

        var film = Volume.FromMillilitres(mixed.Millilitres - gone.Millilitres) / face;
        return film < Thinnest || film > Thickest
            ? new Finding<Length>.None(
                NoFigure.OutOfRange,
                string.Create(CultureInfo.InvariantCulture, $"{film.Millimetres:0.0} mm is no film that a pour leaves"),
                Slip)
            : new Finding<Length>.Found(film);
    }
}
