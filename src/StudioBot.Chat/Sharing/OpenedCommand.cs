using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>opened H-12</c>: a lot that was opened.</summary>
internal sealed class OpenedCommand : Act
{
    private const int MostNamed = 4;

    private static readonly LotSlot Lot = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "opened", Room.Sharing, "A lot that was opened.",
        [Lot, RecordSlots.Day],
        ["opened H-12"])
    {
        More = "From then on it keeps for its time.",
        Also = ["open"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var lots = LotsNamed.Of(said.Of(Lot), writing);
        if (lots.FirstOrDefault(one => one.Lot.OpenedAt is not null) is { Lot.OpenedAt: { } before } open)
        {
            return new Reply(
                new Block.Headline($"Lot {open.Lot.Label} is open since {Day(before, writing)}. Nothing recorded."),
                new Block.Line("If that day is wrong, take its record back first:"),
                new Block.Sample(Typed.In(writing.Turn, "undo list")))
            {
                IsTrouble = true,
            };
        }

        foreach (var (lot, _) in lots)
        {
            writing.Session.Stock.Opened(lot.Id, writing.Act);
        }

        return new Reply(
            [
                new Block.Headline(
                    $"Lot {Sentences.And([.. said.Of(Lot)])}: open since {Day(writing.HappenedAt, writing)}."),
                .. lots.Take(MostNamed).Select(one => new Block.Line(
                    $"{Sentences.Capital(one.Material.Name)}, {Show.Amount(one.Lot.Left)} left; "
                    + (one.Material.ShelfLife is { } keeps
                        ? $"it keeps until {Day(writing.HappenedAt + keeps, writing)}."
                        : "nobody set how long it keeps."))),
            ],
            []);
    }

    private static string Day(DateTimeOffset moment, Writing writing) =>
        Show.Day(DateOnly.FromDateTime(writing.Turn.Zone.LocalOf(moment)));
}
