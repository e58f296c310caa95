using StudioBot.Craft.Air;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>A drying time known for one film in the reference room, carried over to other films and rooms.</summary>
/// <remarks>
/// t·(h/h_ref)^n·(VPD_ref/VPD): the two drying stages of latex films as Kiil (Prog. Org. Coat. 57, 2006) describes them
/// bound n between 1 (open water) and 2 (through a dry layer).
/// </remarks>
public sealed record ScaledTime
{
    /// <summary>This time for this film in the reference room.</summary>
    /// <param name="time">Above zero.</param>
    /// <param name="film">The wet film it holds for, above zero.</param>
    /// <param name="exponent">How the time grows with the film, 1 to 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">One is outside its range.</exception>
    public ScaledTime(TimeSpan time, Length film, double exponent)
    {
        if (time <= TimeSpan.Zero || film.Metres <= 0 || exponent is not (>= 1 and <= 2))
        {
            throw new ArgumentOutOfRangeException(
                nameof(exponent), exponent, "A time and a film above zero, an exponent from 1 to 2.");
        }

        Time = time;
        Film = film;
        Exponent = exponent;
    }

    /// <summary>Dry to the touch: 36 h for 2.5 mm, n 1 (common practice). Never start a ready day from it.</summary>
    public static ScaledTime TouchDry { get; } = new(TimeSpan.FromHours(36), Length.FromMillimetres(2.5), 1);

    /// <summary>Ready for resin: 8 days for 2.5 mm, n 1.75 (common practice).</summary>
    public static ScaledTime ReadyForResin { get; } = new(TimeSpan.FromDays(8), Length.FromMillimetres(2.5), 1.75);

    /// <summary>The time in the reference room.</summary>
    public TimeSpan Time { get; }

    /// <summary>The film it holds for.</summary>
    public Length Film { get; }

    /// <summary>How it grows with the film, 1 to 2.</summary>
    public double Exponent { get; }

    /// <summary>The time for this film in this air; none below 10 °C or in air that takes no water.</summary>
    public Finding<TimeSpan> In(RoomAir air, Length film)
    {
        if (air.Temperature.Celsius < DryingSpeed.ColdestCelsius)
        {
            return new Finding<TimeSpan>.None(NoFigure.OutOfRange, DryingSpeed.TooCold, DryingSpeed.WarmUp);
        }

        return DryingSpeed.Of(air) switch
        {
            Finding<double>.Found(var rate) => new Finding<TimeSpan>.Found(
                Time * (Math.Pow(film / Film, Exponent) / rate)),
            Finding<double>.None(var kind, var why, var instead) => new Finding<TimeSpan>.None(kind, why, instead),
            _ => throw new InvalidOperationException("The cold was answered above."),
        };
    }
}
