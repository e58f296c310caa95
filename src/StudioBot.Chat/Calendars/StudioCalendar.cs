using System.Globalization;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Drying;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Calendars;

/// <summary>What is to come in a studio: ready days, recoat windows, cures, promises, workshops and the next week.
/// </summary>
internal static class StudioCalendar
{
    // What ended longer ago than that stands in nobody's calendar as something to come.
    private static readonly TimeSpan Forgotten = TimeSpan.FromDays(200);

    // How long a workshop is shown for: its words give no end (common practice).
    private static readonly TimeSpan Workshop = TimeSpan.FromHours(3);

    private static readonly TimeSpan Week = TimeSpan.FromMinutes(15);

    /// <summary>All of it, in the order of the pieces.</summary>
    /// <param name="maker">Only pieces of this member; none: all pieces, workshops and the week.</param>
    /// <param name="turn">Who asks, and when.</param>
    /// <param name="studio">The studio.</param>
    public static IReadOnlyList<CalendarEntry> Of(string? maker, Turn turn, Studio studio)
    {
        var moment = StudioMoment.Of(turn, studio);
        var reckoning = new PieceReckoning(studio.View, studio.Practice, moment.Now);
        List<Piece> pieces = [.. reckoning.Pieces
            .Where(piece => (maker is null || piece.Maker == maker) && piece.PouredAt > moment.Now - Forgotten)
            .OrderBy(piece => piece.Number)];
        return
        [
            .. pieces.SelectMany(piece => Drying(piece, reckoning, moment)),
            .. CoatReckoning.Of([.. pieces.Where(piece => piece.Stage == Stage.Coated).Select(piece => piece.Number)],
                studio.View, studio.Practice).SelectMany(coat => Coated(coat, moment)),
            .. pieces.SelectMany(piece => Promised(piece, reckoning, moment)),
            .. maker is null ? Shared(studio, moment) : [],
        ];
    }

    private static IEnumerable<CalendarEntry> Drying(Piece piece, PieceReckoning reckoning, StudioMoment moment)
    {
        var id = Id($"piece-{piece.Number}-ready");
        if (piece.Stage == Stage.Drying && reckoning.Of(piece.Number) is { } look
            && look.Outlook is ReadyOutlook.Expected(var estimate) && look.LikelyAt is { } likely)
        {
            var between = $"{Show.Day(moment.Day(look.Now + estimate.Earliest))} to "
                + Show.Day(moment.Day(look.Now + estimate.Latest));
            yield return new CalendarEntry.AllDay(
                id,
                $"{piece.Number} likely ready to coat",
                $"Eight times in ten between {between}. Check by hand first: cool is not dry.",
                moment.Day(likely));
        }
        else if (piece.Stage == Stage.Bin)
        {
            yield return new CalendarEntry.AllDay(id, $"{piece.Number} is binned", "", moment.Day(piece.PouredAt))
            {
                IsCancelled = true,
            };
        }
    }

    private static IEnumerable<CalendarEntry> Coated(CoatReckoning coat, StudioMoment moment)
    {
        if (coat.HasFailed)
        {
            yield break;
        }

        if (coat.KnownWindow is { } window && window.ClosesFrom > window.OpensBy)
        {
            yield return new CalendarEntry.Between(
                Id($"piece-{coat.Piece}-coat-{coat.Number}-window"),
                $"{coat.Piece}: recoat window",
                "The next coat bonds without sanding. Your product's sheet decides.",
                window.OpensBy,
                window.ClosesFrom);
        }

        if (CoatHours.Full(coat) is { } cured)
        {
            yield return new CalendarEntry.AllDay(
                Id($"piece-{coat.Piece}-coat-{coat.Number}-cured"),
                $"{coat.Piece} fully cured",
                "Your product's sheet decides.",
                moment.Day(cured));
        }
    }

    private static IEnumerable<CalendarEntry> Promised(Piece piece, PieceReckoning reckoning, StudioMoment moment)
    {
        var promises = reckoning.Lines(piece.Number).Select(line => line.What).OfType<PieceEvent.Due>();
        if (promises.LastOrDefault() is not { } due)
        {
            yield break;
        }

        yield return new CalendarEntry.AllDay(
            Id($"piece-{piece.Number}-due"), $"{piece.Number} is promised", "", moment.Day(due.Until))
        {
            IsCancelled = piece.Stage is Stage.Bin or Stage.Sold,
        };
    }

    private static IEnumerable<CalendarEntry> Shared(Studio studio, StudioMoment moment)
    {
        foreach (var workshop in studio.View.Workshops.After(moment.Now))
        {
            yield return new CalendarEntry.Between(
                Id($"workshop-{workshop.Id}"),
                $"Workshop, {workshop.People} people",
                "What it takes is set aside.",
                workshop.StartsAt,
                workshop.StartsAt + Workshop);
        }

        var week = studio.Zone.Next(WeekSetting.Read(studio.View.Studio.Setting(WeekSetting.Name)), moment.Now).At;
        yield return new CalendarEntry.Between("week", "The week of the studio", "", week, week + Week);
    }

    private static string Id(FormattableString id) => id.ToString(CultureInfo.InvariantCulture);
}
