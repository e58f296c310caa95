using StudioBot.Craft.Drying;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Drying;

/// <summary>What hands and coats told about a piece's drying.</summary>
internal static class PieceSayings
{
    // As people begin the words for why a coat failed; one that lifted or clouded did so from moisture underneath.
    private static readonly string[] Moisture =
        ["lift", "cloud", "milk", "moist", "damp", "wet ", "not dry ", "blister"];

    /// <summary>The maker's words and the outcome of the first coat on the paint, each at its moment.</summary>
    /// <remarks>
    /// A coat that failed from moisture speaks against dry at the coat, and the next lies on paint again; one that
    /// failed otherwise says nothing; one that stood speaks for dry, and one that has yet to show does as its maker's
    /// word. Coats on top of a coat say nothing about the paint.
    /// </remarks>
    public static IReadOnlyList<MakerWord> Of(IReadOnlyList<PieceLine> lines, PieceStay stay)
    {
        List<MakerWord> words = [];
        var isCovered = false;
        for (var i = 0; i < lines.Count; i++)
        {
            MakerSays? says = lines[i].What switch
            {
                PieceEvent.Dry => MakerSays.Dry,
                PieceEvent.NotYet => MakerSays.NotYet,
                PieceEvent.Coated when !isCovered => Outcome(lines.Skip(i + 1)),
                _ => null,
            };
            isCovered |= lines[i].What is PieceEvent.Coated;
            isCovered &= says != MakerSays.CoatLifted;
            if (says is { } said)
            {
                words.Add(new MakerWord(stay.Dried(lines[i].At), said));
            }
        }

        return words;
    }

    private static MakerSays? Outcome(IEnumerable<PieceLine> later)
    {
        foreach (var line in later)
        {
            switch (line.What)
            {
                case PieceEvent.Failed(var why):
                    return IsMoisture(why) ? MakerSays.CoatLifted : null;
                case PieceEvent.Coated or PieceEvent.Cured or PieceEvent.Kept or PieceEvent.Sold:
                case PieceEvent.Staged(Stage.Cured or Stage.Kept or Stage.Sold):
                    return MakerSays.CoatCuredClear;
                default:
                    break;
            }
        }

        return MakerSays.Dry;
    }

    private static bool IsMoisture(string? why)
    {
        var words = $" {string.Concat((why ?? "").Select(each => char.IsLetter(each) ? each : ' '))} ";
        return Moisture.Any(word => words.Contains(" " + word, StringComparison.OrdinalIgnoreCase));
    }
}
