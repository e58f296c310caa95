using StudioBot.Host.Settings;

namespace StudioBot.Host.Verbs;

/// <summary>Where a verb works.</summary>
/// <param name="Machine">What stands around the program.</param>
/// <param name="Streams">Where words come in and go out.</param>
/// <param name="Time">The clock.</param>
internal sealed record Workplace(Machine Machine, Streams Streams, TimeProvider Time)
{
    /// <summary>This process.</summary>
    public static Workplace Here()
    {
        var machine = Machine.Here();
        return new Workplace(
            machine,
            Streams.OfProcess(machine.Variables.GetValueOrDefault("NO_COLOR")),
            TimeProvider.System);
    }
}
