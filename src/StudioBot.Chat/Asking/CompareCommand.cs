using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary><c>compare 5.50/10g 1 g per 20ml vs 18/50g 0.3 g per 20ml</c>: which colour costs less in use.</summary>
internal sealed class CompareCommand : Ask
{
    private const string Example = "compare 5.50/10g 1 g per 20ml vs 18/50g 0.3 g per 20ml";

    // Nearer than this, no purse feels it.
    private const decimal SameWithin = 0.005m;

    // Outside these nobody buys or measures, and no figure means anything.
    private const double LeastUnits = 0.001;
    private static readonly Money Dearest = new(1_000_000_00);

    private static readonly OfferSlot First = new("a") { IsRequired = true };
    private static readonly OfferSlot Second = new("b") { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "compare", Room.Asking, "Which colour costs less in use.",
        [First, Second],
        [Example, "compare blue mica vs ultramarine"])
    {
        Cues =
        [
            new("cheaper {material}"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => Wrong(said.Of(First), said) ?? Wrong(said.Of(Second), said);

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var (first, second) = (Side(said.Of(First), "the first", studio), Side(said.Of(Second), "the second", studio));
        if (first is null || second is null)
        {
            return new Reply(
                new Block.Headline($"No price for {(first is null ? said.Of(First) : said.Of(Second)).Material} here"),
                new Block.Line("Say what a pack costs and what colours how much:"),
                new Block.Sample(Typed.In(turn, Example)))
            {
                IsTrouble = true,
            };
        }

        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        List<Figure> rows =
        [
            new(Name(first), Cost(first) + " " + currency),
            new(Name(second), Cost(second) + " " + currency),
        ];
        List<Block> blocks =
        [
            new Block.Headline(Verdict(first, second)),
            new Block.Figures(rows),
            new Block.Line(first.IsNeat && second.IsNeat
                ? "For 100 ml of each, as it comes from the bottle."
                : $"To 100 ml of paint. Doses {first.Dose} and {second.Dose}, assumed equal in effect: "
                    + "nobody has held the two side by side yet."),
        ];
        if (!second.IsNeat && first.Price.PerHundredMillilitres > 0 && second.EqualTo(first) is { } equal)
        {
            blocks.Add(new Block.Line(
                $"They would cost the same at {equal} of {second.Name} to {Show.Volume(second.Price.Per)}."));
        }

        if (Grounds(first, second, said, studio) is { Length: > 0 } grounds)
        {
            blocks.Add(new Block.Line(grounds));
        }

        return new Reply(blocks);
    }

    private static ComparedColour? Side(Offer offer, string name, Studio studio) => offer.Material is { } material
        ? ComparedColour.Of(material, studio)
        : ComparedColour.Of(offer, name, studio);

    private static string Verdict(ComparedColour first, ComparedColour second)
    {
        var (one, other) = (first.Price.PerHundredMillilitres, second.Price.PerHundredMillilitres);
        if (Math.Abs(one - other) <= SameWithin * Math.Max(one, other))
        {
            return "Equal in use";
        }

        var (cheap, dear) = one < other ? (first, second) : (second, first);
        var least = cheap.Price.PerHundredMillilitres;
        return $"{Sentences.Capital(cheap.Name)} is cheaper"
            + (least > 0 ? Times((double)(dear.Price.PerHundredMillilitres / least)) : "");
    }

    private static string Times(double times) => times < 1.05 ? ", but only just" : $", {Show.Number(times)} times";

    private static string Grounds(ComparedColour first, ComparedColour second, Phrase said, Studio studio)
    {
        List<string> grounds = [];
        if ((first.Spoon ?? second.Spoon) is { } spoon)
        {
            var weighs = Show.Mass(Volume.FromUsFluidOunces(1) / 6 * spoon);
            grounds.Add($"Taken: a level tsp of powder weighs {weighs} (common practice){Holds(first, second)}.");
        }

        if (said.Of(First).Material is not null || said.Of(Second).Material is not null)
        {
            grounds.Add($"Usual doses, prices from the lots here.{Sentences.Invented(studio)}");
        }

        return string.Join(' ', grounds);
    }

    // Of two spooned powders the cheaper stays so unless its spoon is that much heavier.
    private static string Holds(ComparedColour first, ComparedColour second)
    {
        var (one, other) = (first.Price.PerHundredMillilitres, second.Price.PerHundredMillilitres);
        return first.Spoon is not null && second.Spoon is not null && Math.Min(one, other) > 0
            ? $"; it holds unless a spoon of {(one < other ? first : second).Name} weighs "
                + $"{Show.Number((double)(Math.Max(one, other) / Math.Min(one, other)))} times the other's"
            : "; weigh yours";
    }

    private static Misread? Wrong(Offer offer, Phrase said) => offer switch
    {
        { Material: { } material } => said.Context.IsCounted(material)
            ? new Misread(material, "is counted, so it colours nothing", "compare blue mica vs ultramarine")
            : null,
        { Per: not Amount.ByVolume } => new Misread(
            AmountWords.Say(offer.Per!),
            "is a mass where a volume of paint is needed",
            Example),
        _ when Amounts(offer).FirstOrDefault(amount => Need.UnitsOf(amount) < LeastUnits) is { } nothing =>
            new Misread(AmountWords.Say(nothing), "is too little to be meant", Example),
        { Price: { } price } when price > Dearest => new Misread(
            price.ToString(),
            "is more than a pack costs",
            Example),
        { Pack: Amount.ByVolume, Dose: Amount.ByMass } =>
            new Misread(AmountWords.Say(offer.Dose!), "is weighed and the pack is poured: give both alike", Example),
        _ => null,
    };

    private static Amount[] Amounts(Offer offer) => [offer.Pack!, offer.Dose!, offer.Per!];

    private static string Name(ComparedColour colour) =>
        Sentences.Capital(Labels.Cut(colour.Name, 18));

    private static string Cost(ComparedColour colour)
    {
        var cost = (double)colour.Price.PerHundredMillilitres;
        return cost < 0.1
            ? Show.Number(cost, 4)
            : cost.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
    }
}
