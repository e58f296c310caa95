using System.Globalization;
using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>The pieces a record is about, and what their stages do not let be done to them.</summary>
internal static class TalkedOf
{
    private const int MostNamed = 6;

    private static readonly TimeSpan Noon = TimeSpan.FromHours(12);

    /// <summary>Those pieces, each once.</summary>
    /// <exception cref="InvalidOperationException">One is not there: the reader lets only numbers of pieces pass.
    /// </exception>
    public static IReadOnlyList<Piece> Pieces(IReadOnlyList<int> numbers, Writing writing) =>
        [.. numbers.Distinct().Select(number => writing.Session.Pieces.Find(number)
            ?? throw new InvalidOperationException($"The reader lets only numbers of pieces pass, not {number}."))];

    /// <summary>17, 18 and 21.</summary>
    public static string Words(IEnumerable<int> numbers)
    {
        var all = numbers.ToList();
        var named = all.Take(all.Count > MostNamed ? MostNamed - 1 : MostNamed)
            .Select(number => number.ToString(CultureInfo.InvariantCulture));
        return Sentences.And(all.Count > MostNamed ? [.. named, $"{all.Count - MostNamed + 1} more"] : [.. named]);
    }

    /// <summary>17, 18 and 21.</summary>
    public static string Words(IReadOnlyList<Piece> pieces) => Words(pieces.Select(piece => piece.Number));

    /// <summary>Is or are, after how many they are.</summary>
    public static string Are(IReadOnlyList<Piece> pieces) => pieces.Count == 1 ? "is" : "are";

    /// <summary>The trouble that names what holds; none where every piece is in one of these stages.</summary>
    /// <param name="pieces">At least one.</param>
    /// <param name="deed">What was to be done: can't be coated.</param>
    /// <param name="already">The stage in which it is done already.</param>
    /// <param name="lets">The stages that let it be done.</param>
    public static Reply? Against(
        IReadOnlyList<Piece> pieces, string deed, Stage? already, params ReadOnlySpan<Stage> lets)
    {
        foreach (var piece in pieces)
        {
            if (!lets.Contains(piece.Stage))
            {
                var why = piece.Stage == already ? " already" : $": {deed}";
                return Trouble($"{piece.Number} {Holds(piece.Stage)}{why}. Nothing recorded.", Next(piece));
            }
        }

        return null;
    }

    /// <summary>The trouble that names the piece that was not poured yet at that moment; none where all were.</summary>
    public static Reply? Before(IReadOnlyList<Piece> pieces, Writing writing)
    {
        var zone = writing.Turn.Zone;
        var said = zone.LocalOf(writing.HappenedAt);

        // A day without an hour is its noon: of the day of the pour it says nothing.
        var early = pieces.FirstOrDefault(piece => said.Date < zone.LocalOf(piece.PouredAt).Date
            || (said.TimeOfDay != Noon && writing.HappenedAt < piece.PouredAt));
        return early is null ? null : Trouble(
            $"{early.Number} was poured only {Show.Moment(early.PouredAt, writing.Turn)}. Nothing recorded.",
            $"piece {early.Number}");
    }

    /// <summary>What can't be done, and a message that works.</summary>
    public static Reply Trouble(string why, string sample) =>
        new(new Block.Headline(why), new Block.Line("Try"), new Block.Sample(sample)) { IsTrouble = true };

    /// <summary>How far a piece is, as one says it of it.</summary>
    public static string Holds(Stage stage) => stage switch
    {
        Stage.Drying => "is still drying",
        Stage.Ready => "is ready to coat",
        Stage.Coated => "is coated and cures",
        Stage.Cured => "is cured",
        Stage.Kept => "is kept",
        Stage.Sold => "is sold",
        Stage.Bin => "is in the bin",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "No words for this stage."),
    };

    private static string Next(Piece piece) => piece.Stage switch
    {
        Stage.Drying => $"dry {piece.Number}",
        Stage.Ready => $"coat {piece.Number} 180 ml 2:1",
        Stage.Coated or Stage.Cured => $"sand {piece.Number}",
        _ => $"piece {piece.Number}",
    };
}
