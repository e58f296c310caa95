namespace StudioBot.Craft.Flow;

/// <summary>What is in the cup now, in millilitres: the first liquid and what was added.</summary>
internal readonly record struct TwoLiquids(double Have, double Added)
{
    public double Share => Added / (Have + Added);

    // To a share of what was added: more of it, or of the first liquid once it has been passed.
    public double Step(double share, bool passed) => Math.Max(0, passed
        ? Added / share - (Have + Added)
        : Have * share / (1 - share) - Added);

    // From one standard deviation nearer to one further; no far end where that would take the whole cup.
    public (double Least, double? Most) Range(double share, double sd, bool passed) => passed
        ? (Step(Math.Min(share + sd, Share), passed), share > sd ? Step(share - sd, passed) : null)
        : (Step(Math.Max(share - sd, Share), passed), share + sd < 1 ? Step(share + sd, passed) : null);

    // The same where millilitres count instead of shares, as added to what was there at first.
    public double StepByVolume(double volume, bool passed) => Math.Max(0, passed
        ? Have * (Added / volume - 1)
        : volume - Added);
}
