using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;
using StudioBot.Records.Stock;
using Saved = StudioBot.Records.Recipes.Recipe;

namespace StudioBot.Chat.Recording;

/// <summary><c>mix medium 400 ml</c>: a batch of a recipe.</summary>
internal sealed class MixCommand : Act
{
    private const int MostRows = 5;

    // Batches are made to a whole ten millilitres: what cups are marked in.
    private const double Step = 10;

    private static readonly NameSlot Recipe = new(NameKind.Recipe, "recipe", "a recipe", "medium")
    {
        IsRequired = true,
    };

    private static readonly AmountSlot Amount = new("an amount", "400 ml") { IsRequired = true };
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "mix", Room.Recording, "A batch of a recipe.",
        [Recipe, Amount, FlowTold.Cup, FlowTold.Trace, FlowTold.Warmth, RecordSlots.Day, RecordSlots.For],
        ["mix medium 400 ml", "mix medium 400 ml ford4 22 s"])
    {
        More = "With its number: the parts leave the shelf, the mixture enters it; what is known to go wrong "
            + "with it is said before it is poured, resin off its ratio first.",
        Also = ["mixed", "mixing"],
        Cues =
        [
            new("made/make/making/prepared/stirred {recipe} {amount}"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => FlowTold.Against(said, "mix medium 400 ml");

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var session = writing.Session;
        var recipe = session.Recipes.All()
            .First(one => one.Name.Equals(said.Of(Recipe), StringComparison.OrdinalIgnoreCase));
        var (making, trouble) = BatchMaking.Of(recipe, said.Of(Amount), writing);
        if (trouble is not null)
        {
            return trouble;
        }

        if (making!.Whole.Millilitres < 1 || making.Parts.Any(part => part.Units < 0.0005))
        {
            return OwnMeasure.Trouble(
                $"“{AmountWords.Say(said.Of(Amount))}” is too little for a batch",
                "Try",
                Sheet.Examples[0],
                writing);
        }

        if (FirstCame.Against(making.Parts, said, writing) is { } early)
        {
            return early;
        }

        var taking = Taking.Of(making.Parts, StockReason.Mixed, writing);
        if (taking.Short.Count > 0)
        {
            return Short(recipe, making, taking, said, writing);
        }

        long? lot = recipe.Makes is { } makes
            ? session.Stock.Enter(
                new NewLot(
                    session.Materials.All().First(material => material.Name == makes),
                    new Records.Materials.Amount.ByVolume(making.Whole),
                    writing.HappenedAt),
                StockReason.Made,
                writing.Act)
            : null;
        var batch = session.Batches.Add(recipe, writing.Whose, writing.HappenedAt, making.Whole, writing.Act, lot);
        var flow = FlowTold.Of(said, writing);
        if (flow is not null)
        {
            session.Batches.Flowed(batch.Number, flow, writing.Act);
        }

        return Mixed(batch.Number, recipe, making, taking, flow, writing);
    }

    private static Reply Mixed(
        int number, Saved recipe, BatchMaking making, Taking taking, FlowReading? flow, Writing writing)
    {
        var (levels, lots) = (new Levels(writing), new LotNames(writing));
        var here = recipe.Makes is { } makes
            ? $", {levels.Say(writing.Session.Materials.All().First(one => one.Name == makes))} here"
            : "";
        List<Block> blocks =
        [
            new Block.Headline($"Batch {number}: {Show.Volume(making.Whole)} {recipe.Name}{here}."),
            new Block.Line("Taken:"),
            FitRows.Of([.. taking.Taken.Take(MostRows)
                .Select(one => new Figure(one.Need.Material.Name, Show.Amount(one.Need.Amount)))]),
        ];
        if (taking.Taken.Count > MostRows)
        {
            blocks.Add(new Block.Line($"and {taking.Taken.Count - MostRows} more."));
        }
        else if (taking.Taken.Count <= 3)
        {
            blocks.Add(new Block.Line($"From {Sentences.And([.. taking.Taken.Select(one => lots.From(one.From))])}."));
        }

        if (flow is not null)
        {
            blocks.Add(new Block.Line($"Kept with it: {FlowTold.Words(flow)}."));
        }

        if (RecipeHazards.Gravest(recipe.Parts, writing.Studio) is { } hazard)
        {
            blocks.Add(hazard);
        }

        if (taking.Taken.Select(one => levels.Low(one.Need.Material)).OfType<string>().FirstOrDefault() is { } low)
        {
            blocks.Add(new Block.Line(low));
        }

        return new Reply(blocks, []);
    }

    private static Reply Short(Saved recipe, BatchMaking making, Taking taking, Phrase said, Writing writing)
    {
        var (asked, here) = taking.Short[0];
        var others = taking.Short.Skip(1).Select(one => one.Asked.Material.Name).ToList();
        var share = taking.Short.Min(one => one.Here.Units / one.Asked.Units);
        var possible = Math.Floor(making.Whole.Millilitres * share / Step) * Step;
        var line = $"mix {recipe.Name} {Show.Volume(Volume.FromMillilitres(possible))}"
            + (said.Has(RecordSlots.For) ? " " + RecordSlots.For.Say(said) : "")
            + (said.Has(RecordSlots.Day) ? " " + RecordSlots.Day.Say(said) : "");
        return new Reply(
            [
                new Block.Headline(
                    $"{Sentences.Capital(asked.Material.Name)} is short: {Show.Amount(asked.Amount)} needed, "
                        + $"{Show.Amount(here.Amount)} in use here. Nothing recorded."),
                .. others.Count > 0 ? [new Block.Line($"Short too: {Sentences.And(others)}.")] : Array.Empty<Block>(),
                new Block.Line("Is there more than the book says? Count it:"),
                new Block.Sample(Typed.In(
                    writing.Turn, $"count {asked.Material.Name} {AmountWords.Say(asked.Amount)}")),
            ],
            possible >= Step ? [new Button($"Mix {Show.Number(possible, 0)} ml", line)] : [])
        {
            IsTrouble = true,
        };
    }
}
