using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>
/// How long a mixed cup may wait, as the sheet prints it for its own sample and temperature. A larger cup has less,
/// by no
/// simple law: split it. The sheet comes first.
/// </summary>
public sealed record PotLife
{
    /// <summary>This time at this temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is not above zero.</exception>
    public PotLife(TimeSpan time, Temperature at)
    {
        Time = time > TimeSpan.Zero
            ? time
            : throw new ArgumentOutOfRangeException(nameof(time), time, "A pot life is above zero.");
        At = at;
    }

    /// <summary>How long.</summary>
    public TimeSpan Time { get; }

    /// <summary>At what temperature of the sample.</summary>
    public Temperature At { get; }

    /// <summary>
    /// The rule of ten degrees: t·2^(−(T − T_ref)/10). Agrees with Arrhenius exactly at 52.95 kJ/mol from 25 °C.
    /// </summary>
    public Finding<TimeSpan> ByTenDegrees(Temperature room) => CureRange.Of(
        Time * Math.Pow(2, -(room.Celsius - At.Celsius) / 10), room, room, At);

    /// <summary>Arrhenius, t·exp[E/R·(1/T − 1/T_ref)], with its band.</summary>
    /// <param name="room">The temperature of the film or of a fresh mix; a full cup soon is warmer than the
    /// room.</param>
    /// <param name="energy">Where the resin's own is known; else 55 with the band of 50 to 60 kJ/mol.</param>
    public Finding<WorkingTime> In(Temperature room, ActivationEnergy? energy = null)
    {
        if (room.Celsius < CureRange.ColdestCelsius)
        {
            return CureRange.TooCold<WorkingTime>();
        }

        var likely = With(energy ?? ActivationEnergy.Usual, room);
        var low = With(energy ?? ActivationEnergy.Low, room);
        var high = With(energy ?? ActivationEnergy.High, room);
        var time = low < high ? new WorkingTime(likely, low, high) : new WorkingTime(likely, high, low);
        return CureRange.Of(time, room, room, At);
    }

    private TimeSpan With(ActivationEnergy energy, Temperature room) => Time / energy.Speed(room, At);
}
