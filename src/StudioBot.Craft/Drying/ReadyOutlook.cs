using StudioBot.Craft.Air;

namespace StudioBot.Craft.Drying;

/// <summary>A piece's outlook: an estimate, or no day and why.</summary>
public abstract record ReadyOutlook
{
    private const double Low = 0.10;
    private const double Middle = 0.50;
    private const double High = 0.90;
    private static readonly TimeSpan Farthest = TimeSpan.FromDays(60);

    private ReadyOutlook()
    {
    }

    /// <summary>An interval of days.</summary>
    public sealed record Expected(ReadyEstimate Estimate) : ReadyOutlook;

    /// <summary>No day.</summary>
    /// <param name="Kind">Which of the reasons.</param>
    /// <param name="Why">It in a line.</param>
    /// <param name="Instead">What would help.</param>
    /// <param name="NotBefore">Where only the far end is unknown: it will not be ready before this long from
    /// now.</param>
    public sealed record NoDay(NoReadyDay Kind, string Why, string Instead, TimeSpan? NotBefore = null) : ReadyOutlook;

    /// <summary>Works out the outlook.</summary>
    /// <param name="piece">What is known of the piece.</param>
    /// <param name="elapsed">Drying time since the pour by the room's clock (equivalent).</param>
    /// <param name="pace">How fast the room is expected to go on.</param>
    /// <param name="air">The room's air as last read; null when nobody has read it.</param>
    /// <param name="shift">What the studio's own pieces have taught.</param>
    public static ReadyOutlook Of(
        DryingPiece piece, TimeSpan elapsed, RoomPace pace, RoomAir? air, StudioShift shift)
    {
        if (Standstill(pace, air) is { } standstill)
        {
            return standstill;
        }

        var weighings = UsableWeighings.Of(piece);
        if (weighings.LastRose)
        {
            return new NoDay(
                NoReadyDay.MassRose,
                "the weight rose: damp air or a slip",
                "weigh it again; undo the weighing if it was a slip");
        }

        var words = MakerWord.Counting(piece.Words).Count;
        if (words == 0 && elapsed.TotalDays > 2 * Math.Exp(ReadyPrior.Quantile(piece, shift, High)))
        {
            return new NoDay(
                NoReadyDay.Overdue,
                "it has dried twice as long as the late end and nobody has looked",
                "look at it, and say dry or notyet");
        }

        var posterior = new ReadyPosterior(piece, shift);
        var (earliest, latest) = (posterior.Left(Low, elapsed, pace), posterior.Left(High, elapsed, pace));
        return latest > Farthest
            ? new NoDay(
                NoReadyDay.TooFarOff,
                "the late end is more than 60 days off",
                "warm or dry the room, or weigh it",
                earliest)
            : new Expected(new ReadyEstimate(
                earliest,
                posterior.Left(Middle, elapsed, pace),
                latest,
                posterior.ProbabilityAt(elapsed),
                new ReadyGrounds(
                    shift.Pieces,
                    words,
                    weighings.AreUsed ? weighings.Used.Count : 0,
                    weighings.Noted,
                    weighings.Use,
                    pace.Grounds)));
    }

    private static NoDay? Standstill(RoomPace pace, RoomAir? air)
    {
        if (air is not null && air.Temperature.Celsius < DryingSpeed.ColdestCelsius)
        {
            return new NoDay(NoReadyDay.TooCold, DryingSpeed.TooCold, DryingSpeed.WarmUp);
        }

        return pace.Rate <= 0 || (air is not null && air.Deficit <= DryingSpeed.StandsStillAt)
            ? new NoDay(NoReadyDay.AirTooDamp, DryingSpeed.TooDamp, DryingSpeed.WarmOrDry)
            : null;
    }
}
