using StudioBot.Chat.Drying;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>What the picture of a drying piece shows, out of the records.</summary>
internal static class PieceSketch
{
    private const int CurvePoints = 120;

    private static readonly TimeOnly Noon = new(12, 0);

    // The picture reaches a little beyond the late end.
    private const double Beyond = 1.6;

    /// <summary>The picture of a piece; none where it dries no more, or where there is nothing to be drawn of it: fewer
    /// than two weighings and no day.</summary>
    public static ReplyFile? Of(PieceStanding standing, PieceReckoning reckoning, StudioMoment moment) =>
        standing.Look is { } look && (look.Known.Weighings.Count > 1 || look.Outlook is ReadyOutlook.Expected)
        && look.Now > look.Piece.PouredAt
            ? ReplyFile.Picture(
                $"piece-{standing.Piece.Number}.png",
                () => PiecePicture.Png(Figures(standing, look, reckoning, moment)))
            : null;

    /// <summary>What it shows.</summary>
    public static PieceFigures Figures(
        PieceStanding standing, PieceOutlook look, PieceReckoning reckoning, StudioMoment moment)
    {
        var piece = standing.Piece;
        var words = new OutlookWords(look, moment);
        var figures = new PieceFigures(
            $"{piece.Number}: {words.Answer}",
            [$"{Show.Surfaces(new SurfaceSet(piece.Surface, depth: piece.Depth))}: {piece.Technique}", words.Grounds],
            moment.Zone.LocalOf(piece.PouredAt),
            moment.Zone.LocalOf(look.Now))
        {
            Ready = Ready(look, moment),
            Weighings =
            [
                .. reckoning.Lines(piece.Number)
                    .Where(line => line.What is PieceEvent.Weighed && line.At >= piece.PouredAt)
                    .OrderBy(line => line.At)
                    .Select(line => (moment.Zone.LocalOf(line.At), ((PieceEvent.Weighed)line.What).Mass)),
            ],
        };
        if (figures.Weighings.Count < 2)
        {
            return figures with
            {
                Odds = [.. Moments(piece.PouredAt, look)
                    .Select(at => (moment.Zone.LocalOf(at), look.OddsAt(at) ?? 0))],
            };
        }

        return DryingBand.Of(look.Known) switch
        {
            Finding<DryingBand>.Found(var band) => WithCurve(figures, band, look, reckoning, moment),
            Finding<DryingBand>.Cautioned(var band, _) => WithCurve(figures, band, look, reckoning, moment),
            Finding<DryingBand>.None none => figures with
            {
                Lines = [figures.Lines[0], $"No curve yet: {none.Why}."],
            },
            var other => throw new InvalidOperationException($"A finding without a road: {other}."),
        };
    }

    private static PieceFigures WithCurve(
        PieceFigures figures,
        DryingBand band,
        PieceOutlook look,
        PieceReckoning reckoning,
        StudioMoment moment) => figures with
        {
            DryMass = band.AtLine,
            Curve =
        [
            .. Moments(look.Piece.PouredAt, look)
                .Select(at => (At: at, Elapsed: Dried(at, look, reckoning)))
                .Where(point => point.Elapsed >= band.From)
                .Select(point => Point(moment.Zone.LocalOf(point.At), band.At(point.Elapsed))),
        ],
        };

    private static CurvePoint Point(DateTime at, (Mass Low, Mass Middle, Mass High) mass) =>
        new(at, mass.Middle, mass.Low, mass.High);

    private static ReadySpan? Ready(PieceOutlook look, StudioMoment moment)
    {
        if (look.Outlook is not ReadyOutlook.Expected(var estimate))
        {
            return null;
        }

        // By the days that the words name, or the line for the 15th may stand at the 16th.
        var now = moment.Zone.LocalOf(look.Now);
        var likely = estimate.LikelyDay(moment.Today);
        return new ReadySpan(
            NotBefore(now, estimate.EarliestDay(moment.Today).ToDateTime(TimeOnly.MinValue)),
            NotBefore(now, likely.ToDateTime(Noon)),
            estimate.LatestDay(moment.Today).AddDays(1).ToDateTime(TimeOnly.MinValue),
            Show.Day(likely));
    }

    private static DateTime NotBefore(DateTime now, DateTime at) => at < now ? now : at;

    // Evenly from the pour to beyond all that is shown.
    private static IEnumerable<DateTimeOffset> Moments(DateTimeOffset poured, PieceOutlook look)
    {
        var end = look.LateAt is { } late && late > look.Now ? late : look.Now;
        var step = (end - poured) * Beyond / CurvePoints;
        return Enumerable.Range(0, CurvePoints + 1).Select(point => poured + step * point);
    }

    // What is to come goes on at the pace that is expected.
    private static TimeSpan Dried(DateTimeOffset at, PieceOutlook look, PieceReckoning reckoning) => at <= look.Now
        ? reckoning.Dried(look.Piece, at)
        : look.Elapsed + (at - look.Now) * look.Pace.Rate;
}
