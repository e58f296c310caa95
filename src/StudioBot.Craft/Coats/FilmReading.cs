using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>How warm a coat's film was, or is expected to be, from this moment on.</summary>
public sealed record FilmReading(DateTimeOffset At, Temperature Film);
