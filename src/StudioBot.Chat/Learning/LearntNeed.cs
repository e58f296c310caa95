using StudioBot.Craft.Pours;

namespace StudioBot.Chat.Learning;

/// <summary>What a technique takes in this studio, learnt from its own pours.</summary>
/// <param name="Estimate">The need per face.</param>
/// <param name="Technique">The technique with the film and run-off that come of it.</param>
/// <param name="Maker">Whose pours alone it rests on; none: those of all.</param>
/// <param name="Since">When the first of them was poured.</param>
/// <param name="Slips">The pieces whose figures were taken for slips and left out.</param>
internal sealed record LearntNeed(
    FilmEstimate Estimate, Technique Technique, string? Maker, DateTimeOffset Since, IReadOnlyList<int> Slips)
{
    /// <summary>12 own pours; Pia's 9 own pours.</summary>
    public string Pours => (Maker is null ? "" : $"{Maker}'s ")
        + (Estimate.OwnPours == 1 ? "1 own pour" : $"{Estimate.OwnPours} own pours");
}
