using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>A flow message put in order: what was read before and after, what was added, what is wanted.</summary>
/// <param name="Cup">The cup whose seconds these are; none: traces.</param>
/// <param name="Before">The first reading.</param>
/// <param name="After">The reading after something was added.</param>
/// <param name="Want">The reading wanted.</param>
/// <param name="Have">What was in the cup at first.</param>
/// <param name="Added">What was added between the readings.</param>
/// <param name="Liquid">What it was, by name.</param>
/// <param name="At">How warm it is, where that was said.</param>
internal sealed record FlowRun(
    FlowCup? Cup,
    TimeSpan? Before,
    TimeSpan? After,
    TimeSpan? Want,
    Volume? Have,
    Volume? Added,
    string? Liquid,
    Temperature? At)
{
    /// <summary>Whether what is wanted was called a trace.</summary>
    public bool WantsTrace { get; init; }

    /// <summary>Whether something was added and read again.</summary>
    public bool IsRun => Added is not null || After is not null;

    /// <summary>The one kind of reading that the message is in.</summary>
    public FlowReading Reading(TimeSpan time) => Cup is { } cup
        ? new FlowReading.OfCup(cup, time, At)
        : new FlowReading.OfTrace(new Trace(time), At);
}
