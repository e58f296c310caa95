using StudioBot.Chat.Coats;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>What is said of a coat that was recorded tacky.</summary>
internal static class TackyTold
{
    /// <summary>What is learnt from it, and how its window moved; or why nothing is.</summary>
    /// <param name="before">What its resin's hours rested on without it.</param>
    /// <param name="coat">The coat, with it.</param>
    /// <param name="writing">When it was seen.</param>
    public static IEnumerable<Block> Of(CurePace before, CoatReckoning coat, Writing writing)
    {
        if (coat.Pace == before)
        {
            yield return new Block.Line(
                CurePace.RatioOf(writing.HappenedAt, CoatReckoning.Times(coat.System), coat.LaidAt, coat.Film) switch
                {
                    null => "Below 10 °C its sheet says nothing: nothing is learnt from it.",
                    { } ratio when CurePace.IsSlip(ratio) =>
                        "Three times off the sheet's hours: seen late, or a slip? Kept, and nothing is learnt.",
                    _ => "Kept; what counts is when it was first seen.",
                });
            yield break;
        }

        // The windows of all coats of this resin move with it.
        writing.Touch(writing.Session.Pieces.All()
            .Where(other => other.Stage == Stage.Coated)
            .Select(other => other.Number));
        yield return new Block.Line("Its resin's hours learn from it.");
        yield return new Block.Line(CoatHours.Window(coat, writing.Turn));
        yield return new Block.Line("The product's sheet comes first.");
    }
}
