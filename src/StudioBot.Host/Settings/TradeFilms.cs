using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Host.Settings;

/// <summary>Reads films and what runs off them.</summary>
internal static class TradeFilms
{
    // Films are written to a hundredth of a millimetre.
    private const double FinestMm = 0.01;

    /// <summary>A film in millimetres, with its scatter.</summary>
    public static FilmRange Scattered(TradeNode node)
    {
        var (low, usual, high) = node.Scatter(TradeBounds.FilmMm);
        return new(Length.FromMillimetres(low), Length.FromMillimetres(usual), Length.FromMillimetres(high));
    }

    /// <summary>A film; where practice knows no scatter, only the usual one stands there.</summary>
    public static FilmRange PerhapsScattered(TradeNode node)
    {
        if (node.Has("low") | node.Has("high"))
        {
            return Scattered(node);
        }

        var usual = Length.FromMillimetres(node.Number("usual", TradeBounds.FilmMm));
        return new(usual, usual, usual);
    }

    /// <summary>What runs off, as a share of the film laid.</summary>
    public static ShareRange RunOff(TradeNode node)
    {
        var (low, usual, high) = node.Scatter(TradeBounds.Share);
        return new(low, usual, high);
    }

    /// <summary>Notes where the layers of a technique don't make its laid film.</summary>
    public static void CheckSum(TradeNode technique, IReadOnlyList<Layer> layers, FilmRange laid)
    {
        var sum = layers.Sum(layer => layer.Film.Usual.Millimetres);
        if (technique.IsSound && Math.Abs(sum - laid.Usual.Millimetres) > FinestMm)
        {
            var shown = TradeBounds.Text(sum);
            technique.Wrong("laidMm", $"its layers make {shown} together", $"\"usual\": {shown}");
        }
    }
}
