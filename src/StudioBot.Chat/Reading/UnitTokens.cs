namespace StudioBot.Chat.Reading;

/// <summary>The unit behind a number: a word, two words, or a sign.</summary>
internal static class UnitTokens
{
    /// <summary>The unit that begins here and its tokens; none where none does.</summary>
    public static (Unit Unit, int Taken)? At(TokenCursor tokens, int ahead) => tokens.At(ahead) switch
    {
        { Kind: TokenKind.Word } word => InTwoWords(tokens, ahead) ?? InOneWord(tokens, ahead, word),
        { Kind: TokenKind.Mark } mark => Sign(tokens, ahead, mark),
        _ => null,
    };

    // fl oz, sq in, deg C.
    private static (Unit Unit, int Taken)? InTwoWords(TokenCursor tokens, int ahead)
    {
        if (tokens.At(ahead + 1) is not { Kind: TokenKind.Word } second || UnitWords.Of(second.Lower) is not { } behind)
        {
            return null;
        }

        return behind.Measure switch
        {
            Measure.Ounce when tokens.IsWord(ahead, "fl", "fluid") => Two(UnitWords.Of("fl oz")),
            Measure.Length when tokens.IsWord(ahead, "sq") => Two(UnitWords.Of(behind.Name + "2")),
            Measure.Temperature when tokens.IsWord(ahead, "deg", "degs", "degree", "degrees") => Two(behind),
            _ => null,
        };
    }

    private static (Unit Unit, int Taken)? InOneWord(TokenCursor tokens, int ahead, Token word) => word.Lower switch
    {
        "m" or "d" when !word.Glued => null,
        "in" when !word.Glued && IsPreposition(tokens, ahead) => null,
        _ => One(UnitWords.Of(word.Lower)),
    };

    // "200 in ml", "60 in the cup": the word behind tells that no inch is meant.
    private static bool IsPreposition(TokenCursor tokens, int ahead) =>
        tokens.At(ahead + 1) is { Kind: TokenKind.Word } next
        && (next.Lower is "the" or "a" or "my" or "our" or "it" or "all" or "total"
            || UnitWords.Of(next.Lower) is not null);

    private static (Unit Unit, int Taken)? Sign(TokenCursor tokens, int ahead, Token mark) => mark.Lower switch
    {
        "%" => tokens.IsWord(ahead + 1, "rh") ? Two(UnitWords.Of("percent")) : One(UnitWords.Of("percent")),
        "°" => Degrees(tokens, ahead),
        "℃" => One(UnitWords.Of("c")),
        "℉" => One(UnitWords.Of("f")),
        "\"" when mark.Glued => One(UnitWords.Of("in")),
        "'" when mark.Glued => tokens.IsMark(ahead + 1, "'") ? Two(UnitWords.Of("in")) : One(UnitWords.Of("ft")),
        "€" or "$" or "£" when tokens.At(ahead + 1) is { Kind: TokenKind.Number, Glued: true } => null,
        _ => One(UnitWords.OfSign(mark.Lower)),
    };

    private static (Unit Unit, int Taken)? Degrees(TokenCursor tokens, int ahead) =>
        tokens.At(ahead + 1) is { Kind: TokenKind.Word, Glued: true } letter
        && UnitWords.Of(letter.Lower) is { Measure: Measure.Temperature } scale
            ? Two(scale)
            : One(UnitWords.Of("deg"));

    private static (Unit Unit, int Taken)? One(Unit? unit) => unit is null ? null : (unit, 1);

    private static (Unit Unit, int Taken)? Two(Unit? unit) => unit is null ? null : (unit, 2);
}
