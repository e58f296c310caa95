using StudioBot.Craft.Units;

namespace StudioBot.Chat.Pictures;

/// <summary>What the picture of a drying piece shows; moments are those of the studio's wall clock.</summary>
/// <param name="Title">The answer: 17: ready 3–9 Dec, likely 5 Dec.</param>
/// <param name="Lines">What it is and what the answer rests on, a line each; at most two.</param>
/// <param name="Poured">When it was poured.</param>
/// <param name="Now">The moment of asking, after that.</param>
internal sealed record PieceFigures(string Title, IReadOnlyList<string> Lines, DateTime Poured, DateTime Now)
{
    /// <summary>When it is likely ready; none where nobody can say.</summary>
    public ReadySpan? Ready { get; init; }

    /// <summary>What it weighed, by moment.</summary>
    public IReadOnlyList<(DateTime At, Mass Mass)> Weighings { get; init; } = [];

    /// <summary>The curve through its weighings, with where it may run; empty where there is none.</summary>
    public IReadOnlyList<CurvePoint> Curve { get; init; } = [];

    /// <summary>What it weighs once it is dry; none where there is no curve.</summary>
    public Mass? DryMass { get; init; }

    /// <summary>How likely it is dry, 0 to 1, by moment; shown where it was not weighed twice.</summary>
    public IReadOnlyList<(DateTime At, double Share)> Odds { get; init; } = [];
}
