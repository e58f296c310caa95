using StudioBot.Craft.Air;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Drying;

/// <summary>When a piece that dries will be ready for resin, with all that this rests on.</summary>
/// <param name="Piece">Which piece.</param>
/// <param name="Now">The moment it was reckoned for.</param>
/// <param name="Known">Its film and water, the words on it and its weighings.</param>
/// <param name="Elapsed">How long it has dried by the clocks of the rooms it lay in.</param>
/// <param name="Pace">How fast its room is expected to go on.</param>
/// <param name="Shift">What the studio's finished pieces have taught.</param>
/// <param name="Outlook">The estimate, or no day and why.</param>
public sealed record PieceOutlook(
    Piece Piece,
    DateTimeOffset Now,
    DryingPiece Known,
    TimeSpan Elapsed,
    RoomPace Pace,
    StudioShift Shift,
    ReadyOutlook Outlook)
{
    private const double Low = 0.10;
    private const double Middle = 0.50;
    private const double High = 0.90;

    /// <summary>What its film rests on.</summary>
    public FilmGrounds FilmGrounds { get; init; }

    /// <summary>The room it lies in; none in a studio without rooms.</summary>
    public string? Room { get; init; }

    /// <summary>That room's air as last read; none where nobody has read it.</summary>
    public RoomAir? Air { get; init; }

    /// <summary>From when on the studio's pieces dry otherwise; none where no such change is seen.</summary>
    public DryingChange? Change { get; init; }

    /// <summary>Until when its maker does not want to be asked; none where nobody said, or that is over.</summary>
    public DateTimeOffset? QuietUntil { get; init; }

    /// <summary>The likely day's instant: one time in two it is ready by then; none where there is no day.</summary>
    public DateTimeOffset? LikelyAt => ReadyAt(Middle);

    /// <summary>The late end: nine times in ten it is ready by then; none where there is no day.</summary>
    public DateTimeOffset? LateAt => ReadyAt(High);

    /// <summary>By when it is ready with these odds, never before now; none where there is no day.</summary>
    /// <param name="share">0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public DateTimeOffset? ReadyAt(double share)
    {
        if (Outlook is not ReadyOutlook.Expected(var estimate))
        {
            return null;
        }

        return Now + share switch
        {
            Low => estimate.Earliest,
            Middle => estimate.Likely,
            High => estimate.Latest,
            _ => new ReadyPosterior(Known, Shift).Left(share, Elapsed, Pace),
        };
    }

    /// <summary>How likely it is ready at a moment to come, 0 to 1; none where there is no day.</summary>
    public double? OddsAt(DateTimeOffset moment) => Outlook is ReadyOutlook.Expected
        ? new ReadyPosterior(Known, Shift).ProbabilityAt(Elapsed + (moment - Now) * Pace.Rate)
        : null;

    /// <summary>How thick it was laid.</summary>
    public Length Film => Known.Film;
}
