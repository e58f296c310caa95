using StudioBot.Chat.Asking;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Surfaces;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>The record of a piece as a phone shows it: how far it is, what it is, what happened last.</summary>
internal sealed class PieceCard(PieceStanding standing, PieceReckoning reckoning, StudioMoment moment, Studio studio)
{
    private Piece Piece => standing.Piece;

    /// <summary>The record, with as much of what happened last as a phone has room for, a line of notes beside it.
    /// </summary>
    public Reply Show()
    {
        List<string> happened = [.. PieceTimeline.Of(Piece, reckoning.Lines(Piece.Number), moment)];
        for (var shown = happened.Count; ; shown--)
        {
            var reply = With([.. happened.TakeLast(shown)], shown < happened.Count);
            if (shown == 0 || LineBudget.Of(reply) < LineBudget.Lines)
            {
                return reply;
            }
        }
    }

    private Reply With(IReadOnlyList<string> happened, bool hasMore)
    {
        List<Block> blocks = [new Block.Headline($"{Piece.Number}: {standing.Answer}")];
        if (standing.Outlook is { } outlook)
        {
            blocks.Add(new Block.Line(outlook.Grounds));
        }

        if (Promise() is { } promise)
        {
            blocks.Add(promise);
        }

        blocks.Add(new Block.Line(Made));
        if ((Lies + Sentences.Invented(studio)).TrimStart() is { Length: > 0 } lies)
        {
            blocks.Add(new Block.Line(lies));
        }

        blocks.AddRange(happened.Select(line => new Block.Line(line)));
        return new Reply(blocks, [.. Next().Concat(hasMore
            ? [new Button("All that happened", $"piece {Piece.Number} timeline")]
            : [])]);
    }

    private string Made
    {
        get
        {
            var colours = Piece.Colours is { } count ? $", {count} colour{(count == 1 ? "" : "s")}" : "";
            var recipe = Piece.Recipe is { } name ? $", {name}" : "";
            var batch = Piece.Batch is { } number ? $", batch {number}" : "";
            return $"{Replies.Show.Surfaces(new SurfaceSet(Piece.Surface, depth: Piece.Depth))}: {Piece.Technique}"
                + $"{colours}{recipe}{batch}; {Piece.Maker}, {Replies.Show.Day(moment.Day(Piece.PouredAt))}.";
        }
    }

    private string Lies
    {
        get
        {
            List<string> words = [];
            if (!standing.IsEnded)
            {
                words.Add(Piece.Shelf is { } shelf ? $"On {shelf}" : "On no shelf");
                words.Add(standing.Look is { Air: { } air, Room: { } room }
                    ? $"{room} {Replies.Show.Degrees(air.Temperature)} {Replies.Show.Share(air.Humidity.Share)}"
                    : reckoning.RoomOf(Piece) ?? "");
            }

            if (standing.Look is { } look)
            {
                words.Add($"film {Replies.Show.Film(look.Film)} {FilmFrom(look.FilmGrounds)}");
            }

            var line = string.Join(", ", words.Where(word => word.Length > 0));
            return line.Length > 0 ? line + "." : "";
        }
    }

    private static string FilmFrom(FilmGrounds grounds) => grounds switch
    {
        FilmGrounds.Poured => "as poured",
        FilmGrounds.Technique => "by technique",
        _ => "taken, technique unknown",
    };

    // The last promise, and whether the paint may still be wet by then.
    private Block? Promise()
    {
        if (standing.IsEnded
            || reckoning.Lines(Piece.Number).LastOrDefault(line => line.What is PieceEvent.Due)
                is not { What: PieceEvent.Due due })
        {
            return null;
        }

        var promised = $"Promised for {Replies.Show.Day(moment.Day(due.Until))}";
        return due.Until < moment.Now ? new Block.Caution($"{promised}: that day is past.")
            : standing.Look?.OddsAt(due.Until) is { } odds && standing.Look.LateAt > due.Until
                ? new Block.Caution($"{promised}: only {Replies.Show.Share(odds)} likely dry by then.")
                : new Block.Line($"{promised}.");
    }

    // What comes next at this stage; the card is for looking, so the first is what the piece waits for.
    private IEnumerable<Button> Next()
    {
        var number = Piece.Number;
        var same = SurfaceSlot.Words(new SurfaceSet(Piece.Surface, depth: Piece.Depth));
        var again = new Button("Pour it again", $"again {number} on {same}");
        return Piece.Stage switch
        {
            Stage.Drying =>
            [
                new("Dry", $"dry {number}"), new("Not yet", $"notyet {number}"),
                new("Coat amounts", $"resin piece {number} 2mm"), again,
            ],
            Stage.Ready =>
                [new("Coat amounts", $"resin piece {number} 2mm"), new("Not yet", $"notyet {number}"), again],
            Stage.Coated when standing.HasFailed => [new("Sanded", $"sand {number}"), again],
            Stage.Coated => [new("Another coat", $"resin piece {number} 2mm"), again],
            Stage.Cured => [new("Kept", $"kept {number}"), again],
            _ => [again],
        };
    }
}
