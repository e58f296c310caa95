namespace StudioBot.Chat.Reading;

/// <summary>What an atom is.</summary>
internal enum AtomKind
{
    /// <summary>A bare number.</summary>
    Number,

    /// <summary>A number with its unit.</summary>
    Quantity,

    /// <summary>Two lengths joined by an x.</summary>
    Sizes,

    /// <summary>Numbers joined by colons; a time of day looks the same.</summary>
    Ratio,

    /// <summary>Two numbers over each other: 2/1, 11/12.</summary>
    Fraction,

    /// <summary>A name that the studio uses.</summary>
    Name,

    Word,
    Mark,
    NewLine,
}
