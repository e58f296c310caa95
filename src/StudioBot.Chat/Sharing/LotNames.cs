using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What lots are called: by their label, their batch, or the day they came.</summary>
internal sealed class LotNames
{
    private readonly Dictionary<long, string> names;

    /// <summary>The names of all lots as they are now.</summary>
    public LotNames(Writing writing)
    {
        var batches = writing.Session.Batches.All()
            .Where(batch => batch.LotId is not null)
            .ToDictionary(batch => batch.LotId!.Value, batch => $"batch {batch.Number}");
        names = writing.Session.Lots.All().ToDictionary(
            lot => lot.Id,
            lot => lot.Label ?? batches.GetValueOrDefault(lot.Id) ?? Came(lot, writing));
    }

    /// <summary>W-1; batch 14; the lot of 5 Oct.</summary>
    public string Of(long lotId) => names[lotId];

    /// <summary>W-1 (40 ml) and W-2 (20 ml); W-1 alone where all came from it.</summary>
    public string From(IReadOnlyList<LotShare> shares) => shares.Count == 1
        ? Of(shares[0].LotId)
        : Sentences.And([.. shares.Select(share => $"{Of(share.LotId)} ({Show.Amount(share.Amount)})")]);

    private static string Came(Lot lot, Writing writing) =>
        $"the lot of {Show.Day(DateOnly.FromDateTime(writing.Turn.Zone.LocalOf(lot.BoughtAt)))}";
}
