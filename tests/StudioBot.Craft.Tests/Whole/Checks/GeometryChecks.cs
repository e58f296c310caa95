using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class GeometryChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["geometry.area"] = given => Answer.Number(given.Surface().Face.SquareCentimetres),
            ["geometry.perimeter"] = given => Answer.Number(given.Surface().Rim.Centimetres),
            ["geometry.area_with_edges"] = given =>
            {
                var surface = given.Surface();
                var sides = surface.Sides(Length.FromCentimetres(given.Number("depth_cm")));
                return Answer.Number((surface.Face + sides).SquareCentimetres);
            },
            ["film.volume"] = FilmOn,
        };

    private static string FilmOn(Inputs given)
    {
        var film = Length.FromMillimetres(given.Number("film_mm"));
        return given.Has("area_m2")
            ? Answer.Number((Area.FromSquareMetres(given.Number("area_m2")) * film).Litres)
            : Answer.Number(FilmVolume.On(new SurfaceSet(given.Surface()), film, default).Millilitres);
    }
}
