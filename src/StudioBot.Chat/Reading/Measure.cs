namespace StudioBot.Chat.Reading;

/// <summary>What a unit measures.</summary>
internal enum Measure
{
    /// <summary>In centimetres.</summary>
    Length,

    /// <summary>In square centimetres.</summary>
    Area,

    /// <summary>In millilitres.</summary>
    Volume,

    /// <summary>In grams.</summary>
    Mass,

    /// <summary>Ounces, which are mass or, of a liquid and for some, volume.</summary>
    Ounce,

    /// <summary>Cups, which differ from kitchen to kitchen.</summary>
    Cup,

    /// <summary>In degrees, with the letter said.</summary>
    Temperature,

    /// <summary>In degrees, without a letter.</summary>
    Degrees,

    /// <summary>In percent.</summary>
    Percent,

    /// <summary>In seconds.</summary>
    Time,

    /// <summary>In turns a minute.</summary>
    Turns,

    /// <summary>In units of the currency.</summary>
    Money,

    /// <summary>In minutes after midnight.</summary>
    Clock,
}
