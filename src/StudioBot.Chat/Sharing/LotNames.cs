using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>What lots are called: by their label, their batch, or the day they came.</summary>
internal sealed class LotNames
{
    private readonly Writing writing;
    private readonly Lazy<Dictionary<long, string>> batches;

    /// <summary>The names of lots as they are now.</summary>
    public LotNames(Writing writing)
    {
        this.writing = writing;
        batches = new(() => writing.Session.Batches.All()
            .Where(batch => batch.LotId is not null)
            .ToDictionary(batch => batch.LotId!.Value, batch => $"batch {batch.Number}"));
    }

    /// <summary>W-1; batch 14; the lot of 5 Oct.</summary>
    public string Of(long lotId)
    {
        var lot = writing.Session.Lots.Of([lotId]).Single();
        return lot.Label ?? batches.Value.GetValueOrDefault(lotId) ?? Came(lot);
    }

    /// <summary>W-1 (40 ml) and W-2 (20 ml); W-1 alone where all came from it.</summary>
    public string From(IReadOnlyList<LotShare> shares) => shares.Count == 1
        ? Of(shares[0].LotId)
        : Sentences.And([.. shares.Select(share => $"{Of(share.LotId)} ({Show.Amount(share.Amount)})")]);

    private string Came(Lot lot) =>
        $"the lot of {Show.Day(DateOnly.FromDateTime(writing.Turn.Zone.LocalOf(lot.BoughtAt)))}";
}
