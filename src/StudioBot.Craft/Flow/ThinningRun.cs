using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>A cup on its way to a consistency: what was in it, what was added, what was read, what is wanted.</summary>
/// <param name="Have">All that was in the cup at first, slurry included; above zero.</param>
/// <param name="Readings">Two or more, in the order taken, all of one kind.</param>
/// <param name="Target">The reading wanted, of that kind.</param>
/// <param name="Added">What was added; decides which way the readings must go.</param>
public sealed record ThinningRun(
    Volume Have, IReadOnlyList<ThinningReading> Readings, FlowReading Target, AddedLiquid Added = AddedLiquid.Unnamed)
{
    /// <summary>The usual run: read, add once, read again.</summary>
    public ThinningRun(
        Volume have,
        FlowReading before,
        Volume added,
        FlowReading after,
        FlowReading target,
        AddedLiquid liquid = AddedLiquid.Unnamed)
        : this(have, [new ThinningReading(default, before), new ThinningReading(added, after)], target, liquid)
    {
    }
}
