using StudioBot.Chat.Asking;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Learning;

/// <summary>That pieces dry otherwise since some day, and what is new in them.</summary>
internal static class DryingNews
{
    private const int MostThings = 2;

    /// <summary>It in a sentence or two; none where no change is seen.</summary>
    public static string? Of(PieceReckoning reckoning, StudioZone zone)
    {
        if (reckoning.Taught.Change is not { } change)
        {
            return null;
        }

        var dried = reckoning.Finished;
        var from = dried.Select(one => one.Lesson).TakeWhile(lesson => lesson != change.First).Count();
        var (before, since) = (dried.Take(from), dried.Skip(from));
        List<string> fresh = [.. since.Select(Things)
            .Aggregate((all, one) => [.. all.Intersect(one)])
            .Except(before.SelectMany(Things))
            .Take(MostThings)];
        var day = Show.Day(zone.DateOf(since.Min(one => one.Piece.PouredAt)));
        return $"The last {change.Pieces} that dried, poured from {day} on, took {Show.Number(change.Factor, 2)} times "
            + "as long as those before"
            + (fresh.Count == 0 ? "." : $"; all of them, and none before: {Sentences.And(fresh)}.");
    }

    private static IEnumerable<string> Things(PastDrying one) =>
        one.Known.Room is { } room ? PieceThings.Of(one.Piece).Append($"in the {room}") : PieceThings.Of(one.Piece);
}
