using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>sold 17 85</c>: a piece sold.</summary>
internal sealed class SoldCommand : Act
{
    private static readonly PiecesSlot Pieces = new()
    {
        IsRequired = true,
        Most = 10,
        LeavesLast = true,
        Doubts = pieces => pieces.Count > 1 ? "is one of several pieces sold for one sum" : null,
    };
    private static readonly NumberSlot Share = new(Measure.Percent, "share_pct", "a share", "40%")
    {
        Unit = "%",
        Most = 100,
    };
    private static readonly NumberSlot StudioShare =
        new(Measure.Percent, "studio_pct", "the studio's share", "studio 10%")
        {
            Leads = ["studio"],
            Unit = "%",
            Most = 100,
        };
    private static readonly MoneySlot Price = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "sold", Room.Recording, "A piece sold.",
        [Pieces, Price, StudioShare, Share, RecordSlots.Day],
        ["sold 17 85", "sold 17 85 gallery 40%", "sold 17 85 studio 10%"])
    {
        Also = ["sell", "sale"],
        RemarksFreely = true,
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said.Has(Pieces) && !said.Has(Price)
        ? new Misread("", "the price is missing", Sheet.Examples[0])
        : said.Or(Share, 0) + said.Or(StudioShare, 0) > 100
            ? new Misread(
                $"{Show.Number(said.Of(StudioShare))} %",
                "with the seller's share is more than the price",
                Sheet.Examples[2])
            : null;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if (TalkedOf.Against(
                pieces, "it can't be sold", Stage.Sold,
                Stage.Drying, Stage.Ready, Stage.Coated, Stage.Cured, Stage.Kept)
            is { } gone)
        {
            return gone;
        }

        var price = said.Of(Price);
        if (Priced.Against(price, Sheet.Examples[0], writing) is { } foreign)
        {
            return foreign;
        }

        var studios = Money.Rounded((double)price.Sum.Sum * said.Or(StudioShare, 0) / 100);
        var byPiece = pieces.Select(_ => 1m).ToList();
        if (StudioPart.Against(pieces, studios, Sheet.Examples[0], writing) is { } refused)
        {
            return refused;
        }

        var each = price.Sum.Split(byPiece);
        double? percent = said.Has(Share) ? said.Of(Share) : null;
        var words = said.Remark.Length > 0 ? said.Remark : null;
        for (var i = 0; i < pieces.Count; i++)
        {
            writing.Session.Pieces.Book(
                pieces[i].Number, new PieceEvent.Sold(each[i], percent, words), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        var booked = StudioPart.Book(pieces, studios.Split(byPiece), writing);
        return Answer(said, pieces, booked, writing);
    }

    private static Reply Answer(Phrase said, IReadOnlyList<Piece> pieces, string booked, Writing writing)
    {
        var price = said.Of(Price).Sum;
        var sellers = Money.Rounded((double)price.Sum * said.Or(Share, 0) / 100);
        var studios = Money.Rounded((double)price.Sum * said.Or(StudioShare, 0) / 100);
        var makers = price - sellers - studios;
        List<Figure> rows = [];
        if (said.Has(Share))
        {
            rows.Add(new Figure($"The seller's {Show.Number(said.Of(Share))} %", sellers.ToString()));
        }

        if (said.Has(StudioShare))
        {
            rows.Add(new Figure($"The studio's {Show.Number(said.Of(StudioShare))} %", studios.ToString()));
        }

        if (rows.Count > 0)
        {
            rows.Add(new Figure("The maker's share", makers.ToString()));
        }

        var (cost, isWhole) = Cost(pieces, writing);
        if (cost is { } materials)
        {
            rows.Add(new Figure(isWhole ? "Materials" : "Materials, in part", materials.ToString()));
            rows.Add(new Figure("Left for the work", (makers - materials).ToString()));
        }

        List<Block> blocks =
        [
            new Block.Headline(
                $"{TalkedOf.Words(pieces)} {TalkedOf.Are(pieces)} sold for {Priced.Words(price, writing)}."),
        ];
        if (rows.Count > 0)
        {
            blocks.Add(new Block.Figures(rows));
        }

        if (said.Remark.Length > 0)
        {
            blocks.Add(new Block.Line($"Noted: {said.Remark.TrimEnd('.')}."));
        }

        blocks.Add(new Block.Line(cost is null
            ? "What went into it is not on record, so no margin. " + booked
            : booked));
        if (pieces.Where(piece => piece.Stage is Stage.Drying or Stage.Coated).ToList() is { Count: > 0 } early)
        {
            blocks.Add(new Block.Caution($"Not cured yet: {TalkedOf.Words(early)}."));
        }

        return new Reply(blocks);
    }

    private static (Money? Cost, bool IsWhole) Cost(IReadOnlyList<Piece> pieces, Writing writing)
    {
        var known = pieces.Select(piece => Priced.Materials(piece, writing)).ToList();
        var priced = known.OfType<StockCost>().Where(cost => cost.Rows.Count > 0).ToList();
        return priced.Count == 0
            ? (null, false)
            : (
                priced.Aggregate(default(Money), (sum, cost) => sum + cost.Total),
                priced.Count == known.Count && priced.All(cost => cost.Unpriced.Count == 0));
    }
}
