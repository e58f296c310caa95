using StudioBot.Craft.Surfaces;

namespace StudioBot.Craft.Pours;

/// <summary>Run-off as learnt from pours whose tray was measured.</summary>
public static class RunOffEstimate
{
    /// <summary>Run-off as a fraction of the laid film on a 30 cm square: the usual one worth four pours, and the
    /// studio's own, each brought to that square's rim.</summary>
    /// <remarks>The mean of a normal-normal update, as for films (<see cref="FilmEstimate"/>).</remarks>
    /// <param name="usual">What is believed without them.</param>
    /// <param name="own">The surfaces of the pours, and the run-off measured on each, as a fraction of its laid film.
    /// </param>
    public static double From(double usual, IReadOnlyList<(Surface Surface, double RunOff)> own) =>
        (FilmPrior.UsualWeight * usual + own.Sum(one => one.RunOff / RunOff.On(one.Surface, 1)))
        / (FilmPrior.UsualWeight + own.Count);
}
