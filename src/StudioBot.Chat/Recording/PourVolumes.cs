using StudioBot.Chat.Replies;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>What was mixed for a piece, what of it stayed in the cups, what ran off; the last hold.</summary>
/// <param name="Mixed">None while nobody said.</param>
/// <param name="Left">None while nobody said.</param>
/// <param name="Caught">None while nobody said.</param>
internal sealed record PourVolumes(Volume? Mixed, Volume? Left, Volume? Caught)
{
    /// <summary>Nobody measured.</summary>
    public static readonly PourVolumes Unknown = new(null, null, null);

    /// <summary>A book holds no line of nothing; what nobody could measure stands for it.</summary>
    private static readonly Volume Trace = Volume.FromMillilitres(0.001);

    /// <summary>As a book can hold it.</summary>
    public static Volume Bookable(Volume volume) => volume < Trace ? Trace : volume;

    /// <summary>What is on record of a piece.</summary>
    public static PourVolumes Of(IEnumerable<PieceLine> lines)
    {
        var volumes = Unknown;
        foreach (var line in lines)
        {
            volumes = line.What switch
            {
                PieceEvent.Poured { Volume: { } volume } => volumes with { Mixed = volume },
                PieceEvent.Mixed mixed => volumes with { Mixed = mixed.Volume },
                PieceEvent.Left left => volumes with { Left = left.Volume },
                PieceEvent.Caught caught => volumes with { Caught = caught.Volume },
                _ => volumes,
            };
        }

        return volumes;
    }

    /// <summary>What can't be: more left and caught than was mixed; none where all agrees.</summary>
    public string? Wrong => Mixed is { } mixed && (Left ?? default) + (Caught ?? default) > mixed
        ? $"{Show.Volume((Left ?? default) + (Caught ?? default))} left and caught are more than the "
            + $"{Show.Volume(mixed)} mixed"
        : null;

    /// <summary>318 ml mixed, 40 ml left in the cups, 55 ml caught.</summary>
    public string Words => string.Join(", ", new[]
    {
        Mixed is { } mixed ? $"{Show.Volume(mixed)} mixed" : null,
        Left is { } left ? $"{Show.Volume(left)} left in the cups" : null,
        Caught is { } caught ? $"{Show.Volume(caught)} caught" : null,
    }.OfType<string>());

    /// <summary>What lies on it and how thick, or what is still to be said for that.</summary>
    public string Film(Piece piece, Length onSides) => (Mixed, Left) switch
    {
        (null, _) => "What was mixed is not on record, so no film.",
        (_, null) => "What was left in the cups is not on record, so no film.",
        ({ } mixed, { } left) => Laid(piece, mixed, left, onSides),
    };

    private string Laid(Piece piece, Volume mixed, Volume left, Length onSides)
    {
        var poured = mixed.Millilitres - left.Millilitres;
        if (Caught is not { } caught)
        {
            return $"{Show.Number(poured)} ml poured; with what was caught I can tell its film.";
        }

        var sides = new SurfaceSet(piece.Surface, depth: piece.Depth).Sides * onSides;
        var onFace = Math.Max(0, poured - caught.Millilitres - sides.Millilitres);
        var film = Volume.FromMillilitres(onFace) / piece.Surface.Face;
        return $"{Show.Number(poured - caught.Millilitres)} ml stay on it: {Show.Film(film)} on the face.";
    }
}
