namespace StudioBot.Craft;

/// <summary>How a computation ends: a number, a number with a caution, or no number and why.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public abstract record Finding<T>
{
    private Finding()
    {
    }

    /// <summary>A number.</summary>
    public sealed record Found(T Value) : Finding<T>;

    /// <summary>A number at the edge of what is known, with one line on why to mind.</summary>
    public sealed record Cautioned(T Value, string Caution) : Finding<T>;

    /// <summary>No number: the kind, why in one line, and what would help.</summary>
    public sealed record None(NoFigure Kind, string Why, string Instead) : Finding<T>;
}
