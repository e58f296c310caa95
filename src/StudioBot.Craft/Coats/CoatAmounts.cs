using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>How much resin a coat takes.</summary>
/// <param name="OneCoat">For one coat, in its two parts.</param>
/// <param name="Total">For all coats.</param>
/// <param name="RunOff">How much of the total flows over the edge.</param>
public sealed record CoatAmounts(ResinAmounts OneCoat, Volume Total, Volume RunOff)
{
    /// <summary>A film above this is a cast, not a coat (common practice): it heats up and shrinks otherwise.</summary>
    public static Length ThickestCoat { get; } = Length.FromMillimetres(10);

    /// <summary>A film above this does not stay up by itself: a free puddle levels near 2.9 mm (from memory).</summary>
    public static Length ThickestFree { get; } = Length.FromMillimetres(3);

    private static readonly Length Thinnest = Length.FromMillimetres(0.05);
    private const double MostRunOff = 0.5;

    // 3 mm typed in another unit may come out a last digit over it.
    private const double Rounding = 1e-9;

    /// <summary>Whether a film this thick is a cast, not a coat.</summary>
    public static bool IsCast(Length film) => film > ThickestCoat * (1 + Rounding);

    /// <summary>(Face·film + sides·side film)·(1 + run-off), for each coat.</summary>
    /// <returns>A caution above 3 mm; no figure for a cast or a film nobody can spread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No coat at all, or a run-off outside 0 to 0.5.</exception>
    public static Finding<CoatAmounts> Of(CoatWish wish, Resin resin)
    {
        if (wish.Coats < 1 || wish.RunOff is not (>= 0 and <= MostRunOff))
        {
            throw new ArgumentOutOfRangeException(nameof(wish), wish, "At least one coat, a run-off of 0 to 0.5.");
        }

        var onSides = wish.SideFilm ?? FilmVolume.ResinSides;
        if (IsCast(wish.Film) || IsCast(onSides))
        {
            return new Finding<CoatAmounts>.None(
                NoFigure.OutOfRange,
                "a film over 10 mm is a cast, not a coat: it heats up",
                "use a casting resin by its sheet, or several coats");
        }

        if (wish.Film < Thinnest)
        {
            return new Finding<CoatAmounts>.None(
                NoFigure.OutOfRange,
                "a film under 0.05 mm can't be spread",
                "did you mean mm? a seal coat is 0.5 to 1 mm");
        }

        var stays = FilmVolume.On(wish.Surfaces, wish.Film, onSides);
        var amounts = new CoatAmounts(
            resin.Split(stays * (1 + wish.RunOff)),
            stays * (1 + wish.RunOff) * wish.Coats,
            stays * wish.RunOff * wish.Coats);
        return wish.Film > ThickestFree * (1 + Rounding)
            ? new Finding<CoatAmounts>.Cautioned(
                amounts, "over 3 mm more runs over the edge, unless it is dammed")
            : new Finding<CoatAmounts>.Found(amounts);
    }
}
