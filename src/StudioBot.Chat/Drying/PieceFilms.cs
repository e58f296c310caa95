using StudioBot.Chat.Recording;
using StudioBot.Craft;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.House;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Drying;

/// <summary>How thick pieces were laid.</summary>
internal sealed class PieceFilms
{
    private readonly PourPractice _pours;
    private readonly Dictionary<string, Technique> _techniques;
    private readonly Dictionary<string, TechniqueOverride> _found;

    /// <summary>By the trade's techniques, under what this studio found for them.</summary>
    public PieceFilms(StudioView view, TradePractice practice)
    {
        _pours = practice.Pours;
        _techniques = practice.Techniques.ToDictionary(one => one.Name, StringComparer.OrdinalIgnoreCase);
        _found = view.Studio.TechniqueOverrides().ToDictionary(one => one.Name, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The film on the face of this piece, and what it rests on.</summary>
    /// <remarks>
    /// Poured less left and caught, over the face; where nobody caught what ran off, the technique's run-off is taken
    /// away instead. A volume that no pour leaves is taken for a slip, and the technique's film stands in.
    /// </remarks>
    public (Length Film, FilmGrounds Grounds) Of(Piece piece, IReadOnlyList<PieceLine> lines)
    {
        var isKnown = _techniques.TryGetValue(piece.Technique, out var technique);
        technique ??= _pours.UsualTechnique.Value;
        var found = _found.GetValueOrDefault(technique.Name);
        return Laid(piece, lines, found?.RunOff ?? technique.RunOff) is { } laid
            ? (laid, FilmGrounds.Poured)
            : (found?.Laid ?? technique.Laid.Usual, isKnown ? FilmGrounds.Technique : FilmGrounds.UsualTechnique);
    }

    /// <summary>All that lies on a piece under this film, its sides with it where they were poured.</summary>
    public Volume On(Piece piece, Length film) =>
        FilmVolume.On(new SurfaceSet(piece.Surface, depth: piece.Depth), film, _pours.SideFilm.Value);

    private Length? Laid(Piece piece, IReadOnlyList<PieceLine> lines, double runOff)
    {
        var volumes = PourVolumes.Of(lines);
        if (volumes.Mixed is not { } mixed)
        {
            return null;
        }

        var left = On(piece, default) + (volumes.Left ?? default);
        var caught = volumes.Caught ?? default;
        var isCaught = volumes.Caught is not null;
        return Film.Laid(mixed, left, caught, piece.Surface.Face) is Finding<Length>.Found(var spread)
            ? isCaught ? spread : spread / (1 + RunOff.On(piece.Surface, runOff))
            : null;
    }
}
