using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 13</c>: a batch and where it went.</summary>
internal sealed class BatchShow : Ask
{
    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };
    private static readonly ReadingWordSlot Reading = new("batch 13 ford4 22 s");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "A batch and where it went.",
        [RowPages.Page, Batch, Reading],
        ["batch 13"])
    {
        More = "Who made it and when, what it took, what is left, the pieces poured from it.",
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var batch = studio.View.Batches.Find(said.Of(Batch))
            ?? throw new InvalidOperationException("The reader lets only numbers of batches pass.");
        var lot = batch.LotId is { } id ? studio.View.Lots.Find(id) : null;
        List<Piece> pieces = [.. studio.View.Pieces.All().Where(piece => piece.Batch == batch.Number)];
        var went = Went(batch, studio);
        List<Button> buttons = [new Button(Labels.Short($"Recipe {batch.Recipe}"), $"recipe {batch.Recipe}")];
        if (lot?.Label is { } label)
        {
            buttons.Add(new Button(Labels.Short($"Lot {label}"), $"lot {label}"));
        }

        return RowPages.Of(
            $"Batch {batch.Number}, {batch.Recipe}: {(lot is null ? Show.Volume(batch.Made) : Left(lot))}",
            [new Block.Line(Made(batch, lot, turn, studio))],
            [
                new RowGroup("It took", went),
                new RowGroup("Poured from it", [.. pieces.Select(piece => new Figure(
                    $"{piece.Number}, {piece.Maker}",
                    $"{StageWords.Of(piece.Stage)}, {WallTime.Day(piece.PouredAt, turn, studio)}"))]),
            ],
            [new Block.Line(Said(pieces, went) + Sentences.Invented(studio))],
            said,
            buttons);
    }

    private static string Left(Lot lot) => Need.UnitsOf(lot.Left) > 0 ? $"{Show.Amount(lot.Left)} left" : "none left";

    private static string Made(Batch batch, Lot? lot, Turn turn, Studio studio)
    {
        var at = $"{WallTime.Day(batch.MadeAt, turn, studio)} {WallTime.Clock(batch.MadeAt, studio)}";
        var made = $"{Show.Volume(batch.Made)} made {at} by {batch.Maker}";
        return lot switch
        {
            null => $"{made}; what is left of it is not on record.",
            { Label: { } label } => $"{made}, lot {label}.",
            _ => $"{made}, a lot without a label.",
        };
    }

    // What its own act drew, each material once.
    private static List<Figure> Went(Batch batch, Studio studio)
    {
        if (batch.ActId is not { } act)
        {
            return [];
        }

        var materials = studio.View.Materials.All().ToDictionary(material => material.Id, material => material.Name);
        return [.. studio.View.Stock.Holding()
            .Where(line => line.ActId == act && line is { Reason: StockReason.Mixed, Fills: false })
            .GroupBy(line => line.MaterialId)
            .Select(same => new Figure(
                materials[same.Key],
                Show.Amount(Sharing.ShelfLevel.Like(
                    same.First().Amount, same.Sum(line => Need.UnitsOf(line.Amount))))))];
    }

    private static string Said(List<Piece> pieces, List<Figure> went)
    {
        var poured = pieces.Count switch
        {
            0 => "No piece on record was poured from it.",
            1 => "1 piece.",
            _ => $"{pieces.Count} pieces.",
        };
        return went.Count > 0 ? poured : $"{poured} What it took was not booked with it.";
    }
}
