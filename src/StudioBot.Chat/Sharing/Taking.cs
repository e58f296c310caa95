using StudioBot.Chat.Asking;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What was taken from the shelf for one record, and what was not there.</summary>
/// <param name="Taken">What, with the lots it came from.</param>
/// <param name="Short">Of which material how much was asked for and how much is there.</param>
internal sealed record Taking(
    IReadOnlyList<(Need Need, IReadOnlyList<LotShare> From)> Taken,
    IReadOnlyList<(Need Asked, Need Here)> Short)
{
    /// <summary>Draws all of it, the oldest open lot first; what is short is not drawn.</summary>
    public static Taking Of(IReadOnlyList<Need> needs, StockReason reason, Writing writing)
    {
        List<(Need, IReadOnlyList<LotShare>)> taken = [];
        List<(Need, Need)> missing = [];
        foreach (var need in needs)
        {
            switch (writing.Session.Stock.Draw(need.Material, need.Amount, reason, writing.Act))
            {
                case Drawn.Taken done:
                    taken.Add((need, done.FromLots));
                    break;
                case Drawn.Short lacking:
                    missing.Add((need, need with { Units = Math.Max(0, need.Units - Need.UnitsOf(lacking.Missing)) }));
                    break;
            }
        }

        return new Taking(taken, missing);
    }
}
