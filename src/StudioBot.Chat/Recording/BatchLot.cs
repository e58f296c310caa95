using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Recording;

/// <summary>A batch with what it became in the stock.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Lot">Its lot; none where its recipe makes no material, or it is older than the books.</param>
/// <param name="Material">What the lot is of.</param>
internal sealed record BatchLot(Batch Batch, Lot? Lot, Material? Material)
{
    /// <summary>The batch of this number as it is now.</summary>
    public static BatchLot Of(int number, Writing writing)
    {
        var session = writing.Session;
        var batch = session.Batches.Find(number)!;
        var lot = batch.LotId is { } id ? session.Lots.Of([id]).Single() : null;
        return new BatchLot(
            batch, lot, lot is null ? null : session.Materials.All().First(one => one.Id == lot.MaterialId));
    }
}
