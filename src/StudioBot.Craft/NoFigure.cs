namespace StudioBot.Craft;

/// <summary>Why there is no number.</summary>
public enum NoFigure
{
    /// <summary>The input lies where the formula does not hold.</summary>
    OutOfRange,

    /// <summary>The readings do not say; another one would.</summary>
    Undetermined,

    /// <summary>The step asked for leads away from the goal.</summary>
    WrongDirection,
}
