namespace StudioBot.Craft.Drying;

/// <summary>Why a piece has no ready day.</summary>
public enum NoReadyDay
{
    /// <summary>The air takes no water.</summary>
    AirTooDamp,

    /// <summary>Below 10 °C the film may not close.</summary>
    TooCold,

    /// <summary>The last weighing was heavier than the one before.</summary>
    MassRose,

    /// <summary>The late end lies more than 60 days off.</summary>
    TooFarOff,

    /// <summary>It has dried twice as long as the prior's late end and nobody has said a word.</summary>
    Overdue,
}
