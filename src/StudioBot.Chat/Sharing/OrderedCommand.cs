using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary><c>ordered white</c>: what is on its way, and so is not told as low.</summary>
internal sealed class OrderedCommand : Act
{
    private const int MostNamed = 3;

    // As long again as it should take, an order has gone astray (common practice).
    private const double Patience = 2;

    private static readonly NamesSlot Materials = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "ordered", Room.Sharing, "What is on its way.",
        [Materials, RecordSlots.Day],
        ["ordered white"])
    {
        More = "Not told as low until it is booked as bought, or twice its delivery time has passed; from two "
            + "deliveries on that time is your own.",
    };

    /// <summary>The button that says so.</summary>
    public static Button Button(string material) => new(Labels.Short($"Ordered {material}"), $"ordered {material}");

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        List<Material> materials =
            [.. writing.Session.Materials.All().Where(one => said.Of(Materials).Contains(one.Name))];
        if (materials.FirstOrDefault(one => one.Form == MaterialForm.Mixture) is { } mixed)
        {
            return new Reply(
                new Block.Headline($"{Sentences.Capital(mixed.Name)} is mixed here. Nothing recorded."),
                new Block.Line("Mix it instead:"),
                new Block.Sample(Typed.In(writing.Turn, $"mix {mixed.Name} 400 ml")))
            {
                IsTrouble = true,
            };
        }

        List<(Material Material, DateTimeOffset Until)> orders =
            [.. materials.Select(material => (material, Until(material, writing)))];
        foreach (var (material, until) in orders)
        {
            writing.Session.Studio.Set(
                Ordered.NameOf(material.Id), new Ordered(writing.Now, until).Words, writing.Act);
        }

        return new Reply(
            [
                new Block.Headline($"On its way: {Sentences.And([.. orders.Select(one => one.Material.Name)])}."),
                .. orders.Take(MostNamed).Select(one => new Block.Line(
                    $"{Sentences.Capital(one.Material.Name)} is not told as low until it is booked as bought, or "
                    + $"{Day(one.Until, writing)} has come.")),
            ],
            [new Button("What else to buy", "buy")]);
    }

    // From the day it was ordered; whatever that was, it takes another day at least.
    private static DateTimeOffset Until(Material material, Writing writing)
    {
        var overdue = writing.HappenedAt.AddDays(Patience * Deliveries.Of(material, writing.Studio).Lead.Days);
        var soonest = writing.Now.AddDays(1);
        return overdue > soonest ? overdue : soonest;
    }

    private static string Day(DateTimeOffset moment, Writing writing) =>
        Show.Date(DateOnly.FromDateTime(writing.Turn.Zone.LocalOf(moment)), writing.Turn);
}
