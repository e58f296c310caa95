namespace StudioBot.Chat.Reading;

/// <summary>
/// Numbers as they are spoken: <c>six</c>, <c>twenty five</c>, <c>a dozen</c>, <c>half a</c> litre, <c>a</c> week.
/// </summary>
internal static class SpokenNumber
{
    /// <summary>The number that begins with the word now, and its tokens; none where none does.</summary>
    public static (double Value, int Taken)? Now(TokenCursor tokens) => tokens.Now.Lower switch
    {
        "a" or "an" or "another" when tokens.At(1) is { Kind: TokenKind.Word } counted => Article(counted),
        "half" when tokens.At(1) is { Kind: TokenKind.Word } => Half(tokens),
        var word => Word(tokens, word),
    };

    // a dozen, a week; but "a g" is no gram.
    private static (double Value, int Taken)? Article(Token counted)
    {
        if (counted.Lower == "dozen")
        {
            return (12, 2);
        }

        var isCounted = UnitWords.Of(counted.Lower) is { Measure: Measure.Time or Measure.Volume or Measure.Mass };
        return isCounted && counted.Lower.Length > 1 ? (1, 1) : null;
    }

    // half a litre, half litre.
    private static (double Value, int Taken)? Half(TokenCursor tokens)
    {
        var article = tokens.IsWord(1, "a", "an") ? 1 : 0;
        return tokens.At(1 + article) is { Kind: TokenKind.Word, Lower.Length: > 1 } measure
            && UnitWords.Of(measure.Lower) is not null
            ? (0.5, 1 + article)
            : null;
    }

    private static (double Value, int Taken)? Word(TokenCursor tokens, string word)
    {
        if (NumberWords.Of(word) is not { } number || (number == 1 && !CountsOne(tokens)))
        {
            return null;
        }

        return number is >= 20 and <= 90
            && tokens.At(1) is { Kind: TokenKind.Word } next
            && NumberWords.Of(next.Lower) is >= 1 and <= 9 and var ones
            ? (number + ones, 2)
            : (number, 1);
    }

    // "one" is a number before what is counted; "the big one" has none.
    private static bool CountsOne(TokenCursor tokens) => tokens.At(1) is { Kind: TokenKind.Word } next
        && (UnitWords.Of(next.Lower) is not null
            || next.Lower is "coat" or "colour" or "color" or "tile" or "panel" or "coaster" or "person" or "round");
}
