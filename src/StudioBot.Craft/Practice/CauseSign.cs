namespace StudioBot.Craft.Practice;

/// <summary>What a studio's records can show in favour of a cause.</summary>
public enum CauseSign
{
    /// <summary>Records can't tell; only eyes can.</summary>
    NotRecorded,

    /// <summary>The room was cold.</summary>
    ColdRoom,

    /// <summary>The room was hot.</summary>
    HotRoom,

    /// <summary>The air was damp, or near its dew point.</summary>
    DampRoom,

    /// <summary>The film was thicker than usual.</summary>
    ThickFilm,

    /// <summary>The film was thinner than usual.</summary>
    ThinFilm,

    /// <summary>The recipe held much water.</summary>
    MuchWater,

    /// <summary>The recipe held much pigment.</summary>
    MuchPigment,

    /// <summary>All colours were powders.</summary>
    OnlyPowders,

    /// <summary>Many colours in one pour.</summary>
    ManyColours,

    /// <summary>Ceiling paint under the pour.</summary>
    CeilingPaint,

    /// <summary>No activator in the pour.</summary>
    NoActivator,

    /// <summary>The consistency read thinner than the technique wants.</summary>
    TooThin,

    /// <summary>The consistency read thicker than the technique wants.</summary>
    TooThick,

    /// <summary>A and B were off their ratio.</summary>
    OffRatio,

    /// <summary>A cup fuller than its safe size.</summary>
    FullCup,

    /// <summary>Coated before the paint was likely dry.</summary>
    CoatedEarly,

    /// <summary>Coated after the window had closed, not sanded.</summary>
    CoatedLate,

    /// <summary>Handled or packed before the full cure.</summary>
    HandledEarly,

    /// <summary>A lot past its shelf life, or stopped.</summary>
    OldLot,
}
