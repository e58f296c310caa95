using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary><c>lot H-12</c>: where a lot went.</summary>
internal sealed class LotCommand : Ask
{
    private const int MostButtons = 3;

    private static readonly LotSlot Lot = new() { TakesBare = true, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "lot", Room.Sharing, "Where a lot went.",
        [RowPages.Page, Lot],
        ["lot H-12"])
    {
        More = "What is left, and the batches, coats and pieces it went into, sure and assumed apart.",
        Also = ["lots", "trace"],
        Cues =
        [
            new("what/which/where/who/how {lot}"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var materials = studio.View.Materials.All().ToDictionary(material => material.Id);
        List<(Lot Lot, Material Material)> lots = [.. studio.View.Lots.Labelled(said.Of(Lot))
            .Select(lot => (lot, materials[lot.MaterialId]))];
        var traced = lots.Select(one => (one.Lot, one.Material, Rows: new LotRows(
            LotTrace.Of(one.Lot.Id, studio.View, studio.Zone), turn, studio))).ToList();
        List<RowGroup> groups = [.. traced.SelectMany(one => Groups(
            one.Rows, lots.Count > 1 ? $"{one.Lot.Label} {one.Material.Name}, " : ""))];
        return RowPages.Of(
            string.Join("; ", lots.Select(one => $"{one.Lot.Label}, {one.Material.Name}: {Left(one.Lot)}")),
            [.. lots.Select(one => new Block.Line(
                (lots.Count > 1 ? $"{one.Material.Name}: " : "") + Came(one.Lot, turn, studio)))],
            groups,
            [new Block.Line(Owned([.. traced.Select(one => one.Rows)]) + Sentences.Invented(studio))],
            said,
            [.. lots.Select(one => one.Material.Name).Distinct().Take(MostButtons)
                .Select(name => new Button(Labels.Short($"Stock {name}"), $"stock {name}"))]);
    }

    private static string Left(Lot lot) => Need.UnitsOf(lot.Left) > 0 ? $"{Show.Amount(lot.Left)} left" : "none left";

    private static IEnumerable<RowGroup> Groups(LotRows rows, string of)
    {
        yield return new RowGroup(Sentences.Capital($"{of}sure, the lot was named"), rows.Of(isSure: true));
        yield return new RowGroup(Sentences.Capital($"{of}assumed, the oldest open lot"), rows.Of(isSure: false));
    }

    private static string Came(Lot lot, Turn turn, Studio studio)
    {
        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        var price = lot.Price is { } sum ? $" for {sum} {currency}".TrimEnd() : "";
        List<string> words = [$"{Show.Amount(lot.Bought)}{price} came {WallTime.Day(lot.BoughtAt, turn, studio)}."];
        if (lot.OpenedAt is { } opened)
        {
            words.Add($"Opened {WallTime.Day(opened, turn, studio)}.");
        }

        if (lot.Stopped is { } stop)
        {
            words.Add($"Stopped {WallTime.Day(stop.At, turn, studio)}{(stop.Why is { } why ? $": {why}" : "")}.");
        }

        if (Before(lot, studio) is { } before)
        {
            words.Add(before);
        }

        return string.Join(' ', words);
    }

    // Books that open with a lot in use don't know where the first of it went.
    private static string? Before(Lot lot, Studio studio)
    {
        var there = studio.View.Trails.Lines(lot.Id)
            .Where(line => line.Reason == StockReason.Opening)
            .Sum(line => Need.UnitsOf(line.Amount));
        var gone = Need.UnitsOf(lot.Bought) - there;
        return there > 0 && gone > 0
            ? $"{Show.Amount(ShelfLevel.Like(lot.Bought, gone))} went before these books opened."
            : null;
    }

    private static string Owned(IReadOnlyList<LotRows> lots)
    {
        var owners = lots.SelectMany(rows => rows.Owners).Distinct().ToList();
        return lots.All(rows => rows.IsEmpty) ? "Nothing on record took from it."
            : owners.Count == 0 ? "None of it is anybody's."
            : $"Whose: {Sentences.And(owners)}.";
    }
}
