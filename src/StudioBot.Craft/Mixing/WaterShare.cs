using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>How far water stretches a paint.</summary>
public static class WaterShare
{
    /// <summary>More added water than this share of the paint's volume stretches its binder too far (common
    /// practice).</summary>
    public const double Most = 0.30;

    /// <summary>Added water over the paint it went into, by volume.</summary>
    /// <returns>Undetermined for water without paint.</returns>
    public static Finding<double> Of(Volume water, Volume paint)
    {
        if (paint <= default(Volume))
        {
            return new Finding<double>.None(NoFigure.Undetermined, "there is no paint in it", "Name the paint too.");
        }

        var share = water / paint;
        return share > Most
            ? new Finding<double>.Cautioned(
                share, "over 30 % water stretches the binder too far: thin with medium or varnish instead")
            : new Finding<double>.Found(share);
    }
}
