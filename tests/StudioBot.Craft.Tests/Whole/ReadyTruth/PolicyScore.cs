namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>How a policy fared over all pieces.</summary>
internal sealed record PolicyScore(IReadOnlyList<Outcome> Outcomes)
{
    /// <summary>Coated more than half a day before the truth, %.</summary>
    public double TooEarly => 100 * Outcomes.Average(one => one.IsTooEarly ? 1.0 : 0);

    /// <summary>Coated more than 15 % before it, %.</summary>
    public double FarTooEarly => 100 * Outcomes.Average(one => one.IsFarTooEarly ? 1.0 : 0);

    /// <summary>Mean days a piece lay ready and uncoated.</summary>
    public double InVain => Outcomes.Average(one => one.InVain);

    /// <summary>Mean looks a piece.</summary>
    public double Looks => Outcomes.Average(one => (double)one.Looks);

    /// <summary>How often the 80 % interval held the truth at the first ping, %.</summary>
    public double HeldAtPing =>
        100 * Outcomes.Where(one => one.HeldAtPing is not null).Average(one => one.HeldAtPing == true ? 1.0 : 0);
}
