using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 13 bin sour</c>: a batch thrown away.</summary>
internal sealed class BatchBin : Act
{
    private static readonly ChoiceSlot Bin = new("", "bin", ["bin", "binned"]) { IsRequired = true };
    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };
    private static readonly TextSlot Why = new("a reason", "sour") { After = Bin };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "A batch thrown away.",
        [Batch, Bin, Why],
        ["batch 13 bin sour"]);

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (batch, lot, material) = BatchLot.Of(said.Of(Batch), writing);
        if (lot is null || material is null)
        {
            return BatchMaking.Trouble(
                $"Batch {batch.Number} stands in no stock",
                $"Nothing of it can leave. Count what is left of {batch.Recipe} instead.");
        }

        if (Asking.Need.UnitsOf(lot.Left) == 0)
        {
            return BatchMaking.Trouble($"Nothing is left of batch {batch.Number}", "So nothing is thrown away.");
        }

        writing.Session.Stock.DrawFrom([lot], material, lot.Left, StockReason.Binned, writing.Act);
        var why = said.Has(Why) ? $": {said.Of(Why)}" : "";
        return new Reply(
            new Block.Headline($"Batch {batch.Number}: {Show.Amount(lot.Left)} thrown away{why}."),
            new Block.Line($"{new Levels(writing).Say(material)} {material.Name} left."));
    }
}
