namespace StudioBot.Chat.Reading;

/// <summary>What is odd about a number as typed.</summary>
internal enum NumberFlaw
{
    None,

    /// <summary>It looks like a number and is none: 30..5, 1/0, NaN.</summary>
    NotANumber,

    /// <summary>Digits of another script.</summary>
    ForeignDigits,

    /// <summary>A character that can't be seen stands inside.</summary>
    Invisible,

    /// <summary>Too large to stand for anything at a pour table.</summary>
    Absurd,

    /// <summary>A comma before exactly three digits: 1,200 is 1.2 or 1200.</summary>
    TwoReadings,
}
