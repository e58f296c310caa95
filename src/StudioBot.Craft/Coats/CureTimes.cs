using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>What a resin's sheet says of one coat's hours, counted from the pour, at one temperature.</summary>
/// <param name="OpensFrom">The earliest that the next coat may go on: tacky but not wet.</param>
/// <param name="OpensBy">The latest it gets tacky.</param>
/// <param name="ClosesFrom">The earliest that the window may close: it no longer takes a nail mark.</param>
/// <param name="ClosesBy">The latest.</param>
/// <param name="Handling">When the piece may be moved.</param>
/// <param name="FullCure">When it is done.</param>
/// <param name="At">The temperature of the sheet.</param>
public sealed record CureTimes(
    TimeSpan OpensFrom,
    TimeSpan OpensBy,
    TimeSpan ClosesFrom,
    TimeSpan ClosesBy,
    TimeSpan Handling,
    TimeSpan FullCure,
    Temperature At);
