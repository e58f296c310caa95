using StudioBot.Chat.Coats;
using StudioBot.Craft;
using StudioBot.Craft.Coats;

namespace StudioBot.Chat.Pings;

/// <summary>The last coat of a piece, as long as it stands: neither failed nor sanded.</summary>
/// <param name="Act">The act that booked it.</param>
/// <param name="Hours">The hours it has.</param>
internal sealed record LaidCoat(long Act, CoatReckoning Hours)
{
    /// <summary>The piece it lies on.</summary>
    public int Piece => Hours.Piece;

    /// <summary>When it was laid.</summary>
    public DateTimeOffset At => Hours.LaidAt;

    /// <summary>When the next coat still bonds; none where nobody can say.</summary>
    public RecoatWindow? Window => Hours.KnownWindow;

    /// <summary>When the piece may be moved; none where nobody can say.</summary>
    public DateTimeOffset? Handling => Hours.KnownCure?.HandlingBy;

    /// <summary>When it is done; none where it is too cold to finish.</summary>
    public DateTimeOffset? FullCure => Hours.KnownCure?.FullCure switch
    {
        Finding<DateTimeOffset>.Found found => found.Value,
        Finding<DateTimeOffset>.Cautioned cautioned => cautioned.Value,
        _ => null,
    };
}
