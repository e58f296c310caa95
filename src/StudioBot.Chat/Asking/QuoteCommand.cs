using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Pours;

namespace StudioBot.Chat.Asking;

/// <summary><c>quote 40cm round bloom resin 2 coats</c>: what a piece costs to make, and a price.</summary>
internal sealed class QuoteCommand : Ask
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly CountSlot Coats = new("coats", "a number of coats", ["coats", "coat"], 20);
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly ColoursSlot Colours = new();
    private static readonly ChoiceSlot Resin = new("", "resin", new Dictionary<string, string>
    {
        ["resin"] = "resin",
        ["epoxy"] = "resin",
    });

    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string>
    {
        ["materials"] = "materials",
    });

    private static readonly NumberSlot Rate = new(Measure.Money, "rate", "what an hour is worth", "rate 18")
    {
        Leads = ["rate"],
        TakesBare = true,
        Most = 1000,
    };

    private static readonly NumberSlot Overhead = new(
        Measure.Money, "overhead", "the studio's rent, heat and light for an hour", "overhead 4")
    {
        Leads = ["overhead"],
        TakesBare = true,
        Least = 0,
        Most = 1000,
    };

    private static readonly NumberSlot Markup = new(Measure.Percent, "markup_pct", "a markup", "markup 60%")
    {
        Leads = ["markup"],
        TakesBare = true,
        Unit = "%",
        Least = 0,
        Most = 1000,
    };

    private static readonly NumberSlot Work = new(Measure.Time, "labour_s", "hours of work", "labour 90 min")
    {
        Leads = ["labour", "labor"],
        Unit = "s",
        Least = 60,
        Most = 360_000,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "quote", Room.Asking, "What a piece costs to make, and a price.",
        [Rate, Overhead, Markup, Work, Coats, Size, Way, Resin, Colours, Detail],
        [
            "quote 40cm round bloom resin 2 coats",
            "what should I charge for a 30cm bloom?",
            "quote 30cm panel rate 20 markup 80%",
            "quote 30cm panel labour 90 min rate 18 overhead 4",
        ])
    {
        More = "Materials, work, overhead, and when it may be ready; own figures by labour 90 min rate 18 "
            + "overhead 4 markup 60%.",
        Also = ["price"],
        Cues =
        [
            new("charge/price/cost {size}"),
            new("ask/sell/take for {size}"),
            new("how much ask/charge/sell/cost {size}") { Weight = 2 },
        ],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => IsCoated(said) ? [new("resin", "yes")] : [];

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var size = said.Of(Size);
        var technique = studio.Technique(said.Has(Way) ? said.Of(Way) : null);
        var colours = said.Or(Colours, new Colours(studio.Practice.Pours.UsualColours.Value, []));
        var amounts = studio.Amounts(
            technique, size, colours.Count, StudioFilms.Of(technique, size, null, studio));
        var coat = IsCoated(said) ? CoatNeeds.Of(size, said.Or(Coats, 1), null, null, studio) : null;
        var needs = new PourNeeds(studio);
        needs.Pour(amounts, colours);
        if (coat is not null)
        {
            needs.Coat(coat.Total, coat.Cups);
        }

        var hasSurfaces = needs.Surfaces(size);
        var stock = StockCost.Of(needs.All, studio);
        if (said.Has(Detail))
        {
            return QuoteShow.Materials(stock, needs.Unknown, studio);
        }

        var work = said.Has(Work)
            ? TimeSpan.FromSeconds(said.Of(Work))
            : UsualWork.On(size.Count, coat is null ? 0 : said.Or(Coats, 1));
        var rate = said.Has(Rate) ? Money.Rounded(said.Of(Rate)) : UsualWork.RatePerHour;
        var markup = said.Has(Markup) ? (decimal)said.Of(Markup) / 100 : UsualWork.Markup;
        var overhead = said.Has(Overhead) ? Money.Rounded(said.Of(Overhead)) : UsualWork.OverheadPerHour;
        var cost = new PieceCost(stock.Total, work, rate, overhead);
        return QuoteShow.Price(
            Quote.ByMarkup(cost.Total, markup),
            cost,
            size.Count,
            [
                QuoteShow.Made(
                    size,
                    said.Has(Way) ? technique.Name : "",
                    said.Has(Colours) ? amounts.Colours : 0,
                    coat,
                    said.Or(Coats, 1)),
                Taken(said, amounts, rate, markup),
                ReadyDay.Line(amounts, size, coat is not null, turn, studio),
                QuoteShow.Without(hasSurfaces, [.. stock.Unpriced, .. needs.Unknown], studio),
            ],
            [
                new Button("Materials", $"{said.Line} materials"),
                new Button("Amounts", $"amounts {SurfaceSlot.Words(size)} {technique.Name} {Colours.Say(colours)}"),
                Other(said, coat is not null),
            ],
            studio);
    }

    private static string Taken(Phrase said, PourAmounts amounts, Money rate, decimal markup)
    {
        List<string> taken = [];
        if (!said.Has(Way))
        {
            taken.Add(amounts.Technique.Name);
        }

        if (!said.Has(Colours))
        {
            taken.Add($"{amounts.Colours} colours");
        }

        if (!said.Has(Rate))
        {
            taken.Add($"rate {Show.Number((double)rate.Sum, 2)} an hour");
        }

        if (!said.Has(Markup))
        {
            taken.Add($"markup {Show.Share((double)markup)}");
        }

        return taken.Count > 0 ? $"Taken: {string.Join(", ", taken)}." : "";
    }

    private static Button Other(Phrase said, bool isCoated) => isCoated
        ? new Button("Resin for it", $"resin {SurfaceSlot.Words(said.Of(Size))} {said.Or(Coats, 1)} coats")
        : new Button("With resin", $"{said.Line} resin");

    private static bool IsCoated(Phrase said) => said.Has(Resin) || said.Has(Coats);
}
