namespace StudioBot.Chat.Reading;

/// <summary>A run of characters that belong together and keep their place in the message.</summary>
/// <param name="Kind">What it is made of.</param>
/// <param name="Start">The first character's place.</param>
/// <param name="End">The place behind the last.</param>
/// <param name="Lower">In lower case, apostrophes and invisible characters left out.</param>
/// <param name="Glued">No blank stands before it.</param>
internal readonly record struct Token(TokenKind Kind, int Start, int End, string Lower, bool Glued)
{
    /// <summary>What a number says.</summary>
    public double Value { get; init; }

    /// <summary>What is odd about a number.</summary>
    public NumberFlaw Flaw { get; init; }
}
