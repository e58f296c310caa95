using StudioBot.Chat.Asking;
using StudioBot.Records.Materials;
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
    /// <param name="needs">What.</param>
    /// <param name="reason">For what.</param>
    /// <param name="writing">Where it is written.</param>
    /// <param name="labels">The lots that were named: what one of them holds comes from no other.</param>
    public static Taking Of(
        IReadOnlyList<Need> needs, StockReason reason, Writing writing, IReadOnlyList<string>? labels = null)
    {
        var named = LotsNamed.Of(labels ?? [], writing).ToLookup(one => one.Material.Id, one => one.Lot);
        List<(Need, IReadOnlyList<LotShare>)> taken = [];
        List<(Need, Need)> missing = [];
        foreach (var need in needs)
        {
            switch (Draw(need, [.. named[need.Material.Id]], reason, writing))
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

    private static Drawn Draw(Need need, IReadOnlyList<Lot> named, StockReason reason, Writing writing) =>
        named.Count == 0
            ? writing.Session.Stock.Draw(need.Material, need.Amount, reason, writing.Act)
            : writing.Session.Stock.DrawFrom(named, need.Material, need.Amount, reason, writing.Act);
}
