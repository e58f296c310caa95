using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Coats;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary>What speaks against a coat, or calls for care.</summary>
internal static class ResinWarnings
{
    /// <summary>One caution each, the gravest first; nothing where all is well.</summary>
    public static IEnumerable<Block> Of(ResinJob job, IReadOnlyList<Piece> pieces)
    {
        if (Numbers(pieces, Stage.Drying) is { Length: > 0 } wet)
        {
            yield return new Block.Caution($"Still drying: {wet}. Not yet.");
        }

        if (Numbers(pieces, Stage.Kept, Stage.Sold, Stage.Bin) is { Length: > 0 } gone)
        {
            yield return new Block.Caution($"Kept, sold or binned: {gone}.");
        }

        // Where it is too cold to cure, dry air is no help.
        if (Time(job.Working) is not null && job.Verdict is { Reasons: [var reason, ..] } verdict)
        {
            yield return new Block.Caution(verdict.Cheapest is { } way
                ? $"First {AirWording.Way(way)}."
                : Capital(AirWording.Reason(reason)) + ".");
        }

        if (job.Working is Finding<WorkingTime>.Cautioned cool)
        {
            yield return new Block.Caution(Capital(cool.Caution) + ".");
        }

        if (job.Need.Caution is { } film)
        {
            yield return new Block.Caution(Capital(film) + ".");
        }
    }

    private static string Numbers(IReadOnlyList<Piece> pieces, params Stage[] stages) =>
        string.Join(", ", pieces.Where(piece => stages.Contains(piece.Stage)).Select(piece => piece.Number));

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>The working time; none where nobody can say.</summary>
    public static WorkingTime? Time(Finding<WorkingTime> finding) => finding switch
    {
        Finding<WorkingTime>.Found found => found.Value,
        Finding<WorkingTime>.Cautioned cautioned => cautioned.Value,
        _ => null,
    };
}
