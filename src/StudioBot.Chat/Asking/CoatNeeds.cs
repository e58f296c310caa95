using StudioBot.Craft;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>The resin that coats take where a message only mentions them.</summary>
/// <param name="Total">Both parts of all coats.</param>
/// <param name="Film">What one coat leaves on the face.</param>
/// <param name="Ratio">A to B, as it was taken.</param>
/// <param name="Cups">How many cups that are small enough not to heat up.</param>
internal sealed record CoatNeeds(ResinAmounts Total, Length Film, MixRatio Ratio, int Cups)
{
    /// <summary>For these surfaces, by the usual resin's figures where nothing else was said.</summary>
    /// <param name="surfaces">What is coated.</param>
    /// <param name="coats">1 or more.</param>
    /// <param name="film">Of one coat, up to 10 mm; none: the usual flood.</param>
    /// <param name="ratio">Of two parts; none: the usual resin's.</param>
    /// <param name="studio">Whose room and practice.</param>
    public static CoatNeeds Of(SurfaceSet surfaces, int coats, Length? film, MixRatio? ratio, Studio studio)
    {
        var usual = studio.Practice.UsualResin;
        var resin = new Resin(ratio ?? usual.Ratio.Value, usual.DensityA.Value, usual.DensityB.Value);
        var laid = film ?? usual.FloodFilm.Value.Usual;
        var total = Amounts(CoatAmounts.Of(
            new CoatWish(surfaces, laid, usual.RunOff.Value.Usual, usual.SideFilm.Value, coats),
            resin)).Total;
        var room = studio.View.Rooms.Current() is [var first, ..] ? first.Temperature : usual.TimesAt.Value;
        var cups = CupPlan.Of(resin, total / coats, usual.Cups.Value.In(room)).Cups * coats;
        return new CoatNeeds(resin.Split(total), laid, resin.Ratio, cups);
    }

    private static CoatAmounts Amounts(Finding<CoatAmounts> found) => found switch
    {
        Finding<CoatAmounts>.Found(var amounts) => amounts,
        Finding<CoatAmounts>.Cautioned(var amounts, _) => amounts,
        _ => throw new InvalidOperationException($"The commands' checks let no cast pass: {found}."),
    };
}
