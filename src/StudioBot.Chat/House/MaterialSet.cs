using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.Materials;
using Measure = StudioBot.Chat.Reading.Measure;

namespace StudioBot.Chat.House;

/// <summary><c>material white low 300 ml</c>: a material's density, low level, pack, spoon or bottle.</summary>
internal sealed class MaterialSet : Act
{
    private const int ADay = 86_400;

    private static readonly NameSlot Material = new(NameKind.Material, "material", "a material", "white")
    {
        IsRequired = true,
    };

    private static readonly NumberSlot Density = new(Measure.Turns, "density", "a density", "density 0.45")
    {
        Leads = ["density"],
        TakesBare = true,
        Least = 0.05,
        Most = 20,
    };

    private static readonly AmountSlot Spoon = Led("spoon", "a spoon's weight", "spoon 2.2 g");
    private static readonly AmountSlot Bottle = Led("bottle", "a bottle's weight", "bottle 60 g");
    private static readonly AmountSlot PackOf = new("a pack", "pack 500 ml") { Lead = "pack", Key = "pack" };
    private static readonly NumberSlot Keeps = Days("keeps", "a shelf life", "keeps 180 days");
    private static readonly NumberSlot Delivery = Days("delivery", "a lead time", "delivery 5 days");
    private static readonly AmountSlot Low = new("a low level", "300 ml") { MayLead = ["low", "level"] };
    private static readonly NumberSlot LowPieces = new(Measure.Turns, "low_pieces", "a low level", "low 20")
    {
        Leads = ["low", "level"],
        TakesBare = true,
        Least = 0,
    };

    // Whoever takes of it, all use it; or each for themselves again.
    private static readonly ChoiceSlot Whose = new("whose", "whose it is", new Dictionary<string, string>
    {
        ["shared"] = "shared",
        ["own"] = "own",
    });

    private static readonly MoneySlot Price = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "material", Room.House, "A material's density, low level or price.",
        [Material, Density, Spoon, Bottle, PackOf, Keeps, Delivery, Low, LowPieces, Whose, Price],
        [
            "material white low 300 ml", "material silver mica density 0.45", "material gold mica spoon 2.2 g",
            "material white bottle 60 g", "material white pack 500 ml 9.90", "material white keeps 180 days",
            "material glove shared",
        ])
    {
        More = "Its pack, spoon and bottle too, and how long it keeps.",
        Also = ["limit", "limits"],
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said)
    {
        var words = TypedWords.Of(said).Select(word => word.ToLowerInvariant()).ToHashSet();
        foreach (var (slot, word) in new (Slot, string)[]
        {
            (Spoon, "spoon"), (Bottle, "bottle"), (PackOf, "pack"), (Keeps, "keeps"), (Delivery, "delivery"),
        })
        {
            if (words.Contains(word) && !said.Has(slot))
            {
                return new Misread(word, "takes its figure behind it", $"material white {slot.Example}");
            }
        }

        if (said.Has(LowPieces) && said.Of(LowPieces) != Math.Floor(said.Of(LowPieces)))
        {
            return new Misread(Figures.Of(said.Of(LowPieces)), "is no count of pieces", "material cup low 20");
        }

        return said.Has(Price) && !said.Has(PackOf)
            ? new Misread(
                said.Of(Price).Sum.Sum.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture),
                "has no unit: ml, g, or a price behind its pack",
                "material white pack 500 ml 9.90")
            : Sheet.Takes.Skip(1).Any(said.Has)
                ? null
                : new Misread("", "what to set is missing", Sheet.Examples[0]);
    }

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var before = writing.Session.Materials.All().First(one => one.Name == said.Of(Material));
        var change = new MaterialChange(before);
        var trouble = Physical(said, change, writing) ?? Stocked(said, change, writing);
        if (trouble is not null)
        {
            return trouble;
        }

        writing.Session.Materials.Change(change.Now, writing.Act);
        return new Reply(
            [
                new Block.Headline($"{Sentences.Capital(before.Name)}: {change.Said[0]}."),
                .. change.Said.Skip(1).Select(line => new Block.Line(Sentences.Of(line))),
                new Block.Line($"{new Levels(writing).Say(before)} on the shelf."),
            ],
            []);
    }

    // What it weighs.
    private static Reply? Physical(Phrase said, MaterialChange change, Writing writing)
    {
        var material = change.Now;
        if ((said.Has(Density) || said.Has(Spoon) || said.Has(Bottle)) && material.Form == MaterialForm.Counted)
        {
            return OwnMeasure.Trouble(
                $"{Sentences.Capital(material.Name)} is counted, not weighed",
                "Its low level can be set:",
                $"material {material.Name} low 20",
                writing);
        }

        if (said.Has(Spoon) && material.Form != MaterialForm.Powder)
        {
            return OwnMeasure.Trouble(
                $"{Sentences.Capital(material.Name)} is no powder: a spoon of it goes by its density",
                "Try",
                $"material {material.Name} density 1.05",
                writing);
        }

        if (said.Has(Density))
        {
            change.Density(Craft.Units.Density.FromGramsPerMillilitre(said.Of(Density)));
        }

        if (said.Has(Spoon))
        {
            change.Spoon(((Amount.ByMass)said.Of(Spoon)).Mass);
        }

        if (said.Has(Bottle))
        {
            change.Bottle(((Amount.ByMass)said.Of(Bottle)).Mass);
        }

        return null;
    }

    // How it is kept and bought.
    private static Reply? Stocked(Phrase said, MaterialChange change, Writing writing)
    {
        if (LowOf(said, change.Now) is { } level)
        {
            var (own, trouble) = OwnMeasure.Of(change.Now, level, writing);
            if (trouble is not null)
            {
                return trouble;
            }

            change.Low(own!.Need.Amount);
        }

        if (said.Has(PackOf))
        {
            var (own, trouble) = OwnMeasure.Of(change.Now, said.Of(PackOf), writing);
            if ((trouble ?? (said.Has(Price)
                ? Prices.Against(said.Of(Price), "material white pack 500 ml 9.90", writing)
                : null)) is { } refused)
            {
                return refused;
            }

            change.Pack(new Pack(own!.Need.Amount, said.Has(Price) ? said.Of(Price).Sum : null));
        }

        if (said.Has(Keeps))
        {
            change.Keeps(TimeSpan.FromDays(Math.Round(said.Of(Keeps) / ADay)));
        }

        if (said.Has(Whose))
        {
            change.Shared(said.Of(Whose) == "shared");
        }

        if (said.Has(Delivery))
        {
            change.Delivery(TimeSpan.FromDays(Math.Round(said.Of(Delivery) / ADay)));
        }

        return null;
    }

    // A bare number is pieces only where pieces are counted.
    private static Amount? LowOf(Phrase said, Material material) =>
        said.Has(Low) ? said.Of(Low)
        : said.Has(LowPieces) ? new Amount.ByCount((int)said.Of(LowPieces))
        : null;

    private static AmountSlot Led(string word, string what, string example) =>
        new(what, example) { Lead = word, Key = word, Only = Measure.Mass };

    private static NumberSlot Days(string word, string what, string example) =>
        new(Measure.Time, word + "_s", what, example)
        {
            Leads = [word],
            Least = ADay,
            Most = 3660.0 * ADay,
            Unit = "s",
        };
}
