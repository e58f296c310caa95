using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>What pings are about, as the records keep it: <c>Piece/17</c>.</summary>
internal static class PingSubjects
{
    private const long MostPieces = 1_000_000;

    /// <summary>A piece.</summary>
    public static PingSubject Piece(int number) => new(PingSubjectKind.Piece, number);

    /// <summary>A coat on a piece, told from every other by the act that booked it.</summary>
    public static PingSubject Coat(long act, int piece) => new(PingSubjectKind.Coat, act * MostPieces + piece);

    /// <summary>A material.</summary>
    public static PingSubject Material(long id) => new(PingSubjectKind.Material, id);

    /// <summary>A lot, bought or mixed here.</summary>
    public static PingSubject Lot(long id) => new(PingSubjectKind.Lot, id);

    /// <summary>The act and the piece of a coat.</summary>
    public static (long Act, int Piece) CoatOf(PingSubject subject) =>
        (subject.Id / MostPieces, (int)(subject.Id % MostPieces));

    /// <summary>The number of the piece that a subject is about; none where it is about none.</summary>
    public static int? PieceOf(PingSubject subject) => subject.Kind switch
    {
        PingSubjectKind.Piece => (int)subject.Id,
        PingSubjectKind.Coat => CoatOf(subject).Piece,
        _ => null,
    };

    /// <summary>As it is kept.</summary>
    public static string Kept(PingSubject subject) =>
        string.Create(CultureInfo.InvariantCulture, $"{subject.Kind}/{subject.Id}");

    /// <summary>As it was kept.</summary>
    /// <exception cref="FormatException">It is no subject.</exception>
    public static PingSubject Read(string kept)
    {
        var parts = kept.Split('/');
        return parts.Length == 2
            && Enum.TryParse<PingSubjectKind>(parts[0], out var kind)
            && long.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var id)
                ? new PingSubject(kind, id)
                : throw new FormatException($"“{kept}” is no subject of a reminder.");
    }
}
