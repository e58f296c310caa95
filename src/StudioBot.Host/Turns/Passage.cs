namespace StudioBot.Host.Turns;

/// <summary>Whether something said is taken up, or comes too fast.</summary>
/// <param name="IsFree">It is taken up.</param>
/// <param name="Told">Where it is the first that is not: in how long the next one is.</param>
internal readonly record struct Passage(bool IsFree, TimeSpan? Told);
