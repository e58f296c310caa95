using System.Globalization;
using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>weigh 17 318.4 g</c>: a weighing.</summary>
internal sealed class WeighCommand : Act
{
    // A piece that doubled since it was last on the scale is another piece, or a slip.
    private const double MostTimes = 2;
    private const int MostRows = 8;
    private const double MostAtOnce = 0.05;

    private static readonly TimeSpan Moments = TimeSpan.FromMinutes(10);

    private static readonly ChoiceSlot Bare = new("", "bare", ["bare", "empty"]);
    private static readonly WeighingsSlot Weighings = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "weigh", Room.Recording, "A weighing.",
        [Bare, Weighings, RecordSlots.Day],
        ["weigh 17 318.4 g", "weigh 17 bare 262.1 g"])
    {
        Also = ["weight", "weighs", "weighed", "weighing"],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => said.Has(Bare) ? [new("bare", "yes")] : [];

    /// <inheritdoc/>
    internal override bool ShowsReadyDays => true;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (weighings, isBare) = (said.Of(Weighings), said.Has(Bare));
        var pieces = TalkedOf.Pieces([.. weighings.Select(weighing => weighing.Piece)], writing);
        if (TalkedOf.Against(
                pieces, "it isn't here to be weighed", null,
                Stage.Drying, Stage.Ready, Stage.Coated, Stage.Cured, Stage.Kept) is { } gone)
        {
            return gone;
        }

        if (!isBare && TalkedOf.Before(pieces, writing) is { } early)
        {
            return early;
        }

        List<Figure> rows = [];
        foreach (var (piece, mass) in weighings)
        {
            var lines = writing.Session.Pieces.Lines(piece);
            if (!writing.Turn.IsAgreed
                && (Doubt(piece, mass, isBare, lines) ?? Sudden(piece, mass, isBare, lines, writing)) is { } doubt)
            {
                return Asked(doubt, said);
            }

            rows.Add(new Figure(Figures.Of(piece), Show.OnScale(mass) + Since(mass, isBare, lines, writing)));
            writing.Session.Pieces.Book(
                piece, isBare ? new PieceEvent.Bare(mass) : new PieceEvent.Weighed(mass), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        return Answer(rows, pieces, isBare, writing);
    }

    private static Reply Answer(List<Figure> rows, IReadOnlyList<Piece> pieces, bool isBare, Writing writing)
    {
        var bare = isBare ? " bare" : "";
        if (rows is [var only])
        {
            return new Reply(
                new Block.Headline($"{only.Name}{bare}: {only.Value}."),
                new Block.Line(isBare
                    ? "The weight before the pour, from which its film is worked out."
                    : $"It {TalkedOf.Holds(pieces[0].Stage)}, {PiecePlace.Words(pieces[0], writing.Session)}."));
        }

        var more = rows.Count > MostRows ? $" The first {MostRows}:" : "";
        return new Reply(
            new Block.Headline($"{rows.Count} weighings{bare}.{more}"),
            FitRows.Of([.. rows.Take(MostRows)]));
    }

    private static string Since(Mass mass, bool isBare, IReadOnlyList<PieceLine> lines, Writing writing)
    {
        if (isBare
            || lines.LastOrDefault(line => line.What is PieceEvent.Weighed && line.At <= writing.HappenedAt)
                is not { What: PieceEvent.Weighed last } line)
        {
            return "";
        }

        var change = mass.Grams - last.Mass.Grams;
        var sign = change < 0 ? "−" : "+";
        return $", {sign}{Math.Abs(change).ToString("0.0", CultureInfo.InvariantCulture)} in "
            + Show.Time(writing.HappenedAt - line.At);
    }

    // Lighter than it was bare, or more than twice what it weighed: a slip of the finger, or another piece.
    private static string? Doubt(int piece, Mass mass, bool isBare, IReadOnlyList<PieceLine> lines)
    {
        var last = lines.Select(line => line.What).OfType<PieceEvent.Weighed>().LastOrDefault()?.Mass;
        var bare = lines.Select(line => line.What).OfType<PieceEvent.Bare>().LastOrDefault()?.Mass;
        return (isBare, last, bare) switch
        {
            (true, { } weighed, _) when mass >= weighed =>
                $"{piece} bare at {Show.OnScale(mass)}: poured it weighed {Show.OnScale(weighed)}",
            (false, _, { } empty) when mass < empty =>
                $"{piece} at {Show.OnScale(mass)}: bare it weighed {Show.OnScale(empty)}",
            (false, { } weighed, _) when mass > weighed * MostTimes =>
                $"{piece} at {Show.OnScale(mass)}: last it weighed {Show.OnScale(weighed)}",
            _ => null,
        };
    }

    // Paint does not dry so fast: it was another piece, or another scale.
    private static string? Sudden(
        int piece, Mass mass, bool isBare, IReadOnlyList<PieceLine> lines, Writing writing) =>
        !isBare
        && lines.LastOrDefault(line => line.What is PieceEvent.Weighed && line.At <= writing.HappenedAt)
            is { What: PieceEvent.Weighed last } line
        && writing.HappenedAt - line.At <= Moments
        && Math.Abs(mass.Grams - last.Mass.Grams) > last.Mass.Grams * MostAtOnce
            ? $"{piece} at {Show.OnScale(mass)}: {Show.Time(writing.HappenedAt - line.At)} before it weighed "
                + Show.OnScale(last.Mass)
            : null;

    private static Reply Asked(string doubt, Phrase said) => new(
        [
            new Block.Headline($"{doubt}. Nothing recorded yet."),
            new Block.Line("Is that right?"),
            new Block.Sample(said.Line),
        ],
        [new Button("Yes, it is", said.Line) { Agrees = true }])
    {
        IsTrouble = true,
    };
}
