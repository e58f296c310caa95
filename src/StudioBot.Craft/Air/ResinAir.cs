using StudioBot.Craft.Units;

namespace StudioBot.Craft.Air;

/// <summary>Whether resin may be poured in this air, now and through the night until it is tack-free.</summary>
/// <param name="Answer">Yes, yes with caution, or no.</param>
/// <param name="Now">The margin at the pour; null in wholly dry air, which has no dew point.</param>
/// <param name="AtNight">The margin at the coldest expected, the vapour staying as it is; null likewise.</param>
/// <param name="Reasons">What speaks against it or calls for care, the gravest first; empty for a plain yes.</param>
/// <param name="Ways">For a no: what alone would make it a yes, the cheapest first; else empty.</param>
/// <remarks>The product's own sheet comes first.</remarks>
public sealed record ResinAir(
    ResinAnswer Answer,
    DewMargin? Now,
    DewMargin? AtNight,
    IReadOnlyList<ResinReason> Reasons,
    IReadOnlyList<WayToYes> Ways)
{
    /// <summary>Above this, no, unless the sheet says otherwise (three coating texts quote it), in percent.</summary>
    public const double MostHumidPercent = 85;

    /// <summary>Above this, amine blush is likely enough to say so, in percent (common practice).</summary>
    public const double BlushPercent = 70;

    /// <summary>
    /// How much cooler than the air an unmeasured surface is taken to be, in degrees (common practice).
    /// </summary>
    public const double AssumedSurfaceDrop = 1;

    /// <summary>How much the room is taken to cool at night when nobody knows, in degrees (common practice).</summary>
    public const double AssumedNightDrop = 4;

    /// <summary>The cheapest way to yes; null when the answer is no no, or no way is known.</summary>
    public WayToYes? Cheapest => Ways.Count > 0 ? Ways[0] : null;

    /// <summary>Judges the air for resin.</summary>
    /// <param name="air">The room at the pour.</param>
    /// <param name="surface">How warm the piece is; unknown: the air less 1 °C, said so.</param>
    /// <param name="night">The coldest until tack-free; unknown: the air less 4 °C, said so.</param>
    /// <param name="sheetLimit">The most humid air that the product's sheet allows; unknown: 85 %.</param>
    /// <remarks>
    /// Surface at least 3 °C above the dew point and at most 85 %, as coating texts quote with ISO 8502-4's method; the
    /// same margin at night, with today's vapour in the cooler room.
    /// </remarks>
    public static ResinAir Judge(
        RoomAir air, Temperature? surface = null, Temperature? night = null, RelativeHumidity? sheetLimit = null)
    {
        if (air.Humidity.Percent <= 0)
        {
            return new ResinAir(ResinAnswer.Yes, null, null, [], []);
        }

        var dew = DewPoint.Of(air);
        var now = new DewMargin(dew, surface ?? air.Temperature.Warmer(-AssumedSurfaceDrop), surface is null);
        var later = new DewMargin(dew, night ?? air.Temperature.Warmer(-AssumedNightDrop), night is null);
        var limit = sheetLimit ?? RelativeHumidity.FromPercent(MostHumidPercent);

        List<ResinReason> against = [];
        if (!now.IsEnough) against.Add(ResinReason.SurfaceNearDewPoint);
        if (!later.IsEnough) against.Add(ResinReason.NightNearDewPoint);
        if (air.Humidity.Percent > limit.Percent) against.Add(ResinReason.AirTooHumid);

        List<ResinReason> care = [];
        if (now.IsEnough && !now.IsAmple) care.Add(ResinReason.SlimMargin);
        if (later.IsEnough && !later.IsAmple) care.Add(ResinReason.SlimMarginAtNight);
        if (air.Humidity.Percent > BlushPercent) care.Add(ResinReason.BlushLikely);

        var answer = against.Count > 0 ? ResinAnswer.No : care.Count > 0 ? ResinAnswer.YesWithCaution : ResinAnswer.Yes;
        return new ResinAir(
            answer, now, later, [.. against, .. care], ResinWays.Of(air, now, later, limit, against));
    }
}
