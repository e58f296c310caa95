using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 13 added 30 ml thinner</c>: what was added to a batch.</summary>
internal sealed class BatchAmend : Act
{
    private static readonly ChoiceSlot Added = new("", "what was added", ["added", "add"]) { IsRequired = true };
    private static readonly ItemsSlot Items = new() { IsRequired = true };
    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "What was added to a batch.",
        [Batch, Added, Items, RecordSlots.Day, RecordSlots.For],
        ["batch 13 added 30 ml thinner"]);

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (own, trouble) = OwnMeasure.Of(said.Of(Items), writing);
        if (trouble is not null)
        {
            return trouble;
        }

        IReadOnlyList<Need> needs = [.. own.Select(one => one.Need)];
        var number = said.Of(Batch);
        if (needs.FirstOrDefault(need => need.Material.Form == MaterialForm.Counted) is { } counted)
        {
            return OwnMeasure.Trouble(
                $"{Sentences.Capital(counted.Material.Name)} goes into no batch",
                "It is counted. Try",
                $"batch {number} added 30 ml thinner",
                writing);
        }

        var batch = BatchLot.Of(number, writing);
        if (batch.Lot is { } lot && Need.UnitsOf(lot.Left) == 0)
        {
            return BatchMaking.Trouble(
                $"Nothing is left of batch {number}", "What is mixed anew is a batch of its own.");
        }

        if (FirstCame.Against(needs, said, writing) is { } early)
        {
            return early;
        }

        var taking = Taking.Of(needs, StockReason.Mixed, writing);
        return taking.Short.Count > 0 ? Short(number, taking, writing) : Grown(batch, taking, writing);
    }

    private static Reply Grown(BatchLot batch, Taking taking, Writing writing)
    {
        var number = batch.Batch.Number;
        var grows = taking.Taken.Select(one => Space(one.Need)).ToList();
        var by = grows.OfType<Volume>().Aggregate(default(Volume), (sum, volume) => sum + volume);
        if (batch.Lot is { } lot && by.Millilitres > 0)
        {
            writing.Session.Stock.AddTo(
                lot.Id, batch.Material!, new Amount.ByVolume(by), StockReason.Made, writing.Act);
        }

        var (levels, lots) = (new Levels(writing), new LotNames(writing));
        var added = Sentences.And([.. taking.Taken.Select(one => OwnMeasure.Say(one.Need))]);
        List<Block> blocks =
        [
            new Block.Headline(batch.Lot is null
                ? $"Batch {number}: {added} added."
                : $"Batch {number}: {added} added, {Show.Amount(BatchLot.Of(number, writing).Lot!.Left)} left of it."),
            .. taking.Taken.Take(3).Select(one => new Block.Line(
                $"{Sentences.Capital(one.Need.Material.Name)}: {levels.Say(one.Need.Material)} left, "
                    + $"from {lots.From(one.From)}.")),
        ];
        if (batch.Lot is null)
        {
            blocks.Add(new Block.Line("It stands in no stock of its own, so nothing grows."));
        }
        else if (grows.Contains(null))
        {
            blocks.Add(new Block.Line("A powder of unknown density adds no volume."));
        }

        return new Reply(blocks, []);
    }

    // A powder's grains go between; how much room they take is their own density's to say.
    private static Volume? Space(Need need) => need.Material.Form == MaterialForm.Powder
        ? need.Material.Density is { GramsPerMillilitre: > 0 } density ? Mass.FromGrams(need.Units) / density : null
        : Volume.FromMillilitres(need.Units);

    private static Reply Short(int number, Taking taking, Writing writing)
    {
        var (asked, here) = taking.Short[0];
        return new Reply(
            [
                new Block.Headline(
                    $"{Sentences.Capital(asked.Material.Name)} is short: {Show.Amount(here.Amount)} in use here, "
                        + $"{Show.Amount(asked.Amount)} asked. Nothing recorded."),
                new Block.Line("Is there more than the book says? Count it:"),
                new Block.Sample(Typed.In(
                    writing.Turn, $"count {asked.Material.Name} {AmountWords.Say(asked.Amount)}")),
            ],
            here.Units > 0 && taking is { Taken: [], Short.Count: 1 }
                ? [new Button(
                    "Add what is there",
                    $"batch {number} added {AmountWords.Say(here.Amount)} {asked.Material.Name}")]
                : [])
        {
            IsTrouble = true,
        };
    }
}
