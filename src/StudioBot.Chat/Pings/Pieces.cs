using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>How pings name pieces: <c>17 and 18 on A2</c>.</summary>
internal static class Pieces
{
    /// <summary>So many pieces one message about resin takes.</summary>
    public const int MostForResin = 20;

    /// <summary>So many pieces one message takes otherwise.</summary>
    public const int MostTyped = 30;

    private const int MostNamed = 12;

    /// <summary>The numbers of the pieces of a line, each once.</summary>
    public static IReadOnlyList<int> Of(PingLine line, PingTurn turn) =>
        [.. line.Pings.Select(ping => PingSubjects.PieceOf(ping.Planned.Subject)).OfType<int>().Distinct().Order()];

    /// <summary>The numbers of the pieces of all lines, each once.</summary>
    public static IReadOnlyList<int> Of(IEnumerable<PingLine> lines, PingTurn turn) =>
        [.. lines.SelectMany(line => Of(line, turn)).Distinct().Order()];

    /// <summary>17 and 18 on A2; many are counted.</summary>
    public static string Named(PingLine line, PingTurn turn) =>
        Named(Of(line, turn)) + (line.Place.Length > 0 ? $" on {line.Place}" : "");

    /// <summary>17 and 18; many are counted.</summary>
    public static string Named(IReadOnlyList<int> pieces) => pieces.Count <= MostNamed
        ? Asking.Sentences.And([.. pieces.Select(piece => piece.ToString(CultureInfo.InvariantCulture))])
        : $"{string.Join(", ", pieces.Take(MostNamed))} and {pieces.Count - MostNamed} more";

    /// <summary>17 18 21, as a message names them; no more than a message takes.</summary>
    public static string Typed(IReadOnlyList<int> pieces) => string.Join(' ', pieces.Take(MostTyped));
}
