namespace StudioBot.Chat.Reading;

/// <summary>One number, written in one token or in several.</summary>
internal static class NumberTokens
{
    /// <summary>The number that begins here: <c>20</c>, <c>1 1/2</c>, <c>1/2</c>, <c>1 000</c>.</summary>
    public static (double Value, NumberFlaw Flaw, int Taken) At(TokenCursor tokens, int ahead)
    {
        var first = tokens.At(ahead)!.Value;
        if (first.Flaw != NumberFlaw.None)
        {
            return (first.Value, first.Flaw, 1);
        }

        if (ProperFraction(tokens, ahead) is { } fraction)
        {
            return (fraction, NumberFlaw.None, 3);
        }

        var isWhole = first.Value == Math.Floor(first.Value);
        if (isWhole && first.Value >= 0 && ProperFraction(tokens, ahead + 1) is { } rest)
        {
            return (first.Value + rest, NumberFlaw.None, 4);
        }

        var isGrouped = isWhole && first.Value is >= 1 and <= 999
            && tokens.At(ahead + 1) is { Kind: TokenKind.Number, Lower: "000" };
        return isGrouped ? (first.Value * 1000, NumberFlaw.None, 2) : (first.Value, NumberFlaw.None, 1);
    }

    /// <summary>A fraction below one such as people measure with; none where none begins here.</summary>
    public static double? ProperFraction(TokenCursor tokens, int ahead)
    {
        if (tokens.At(ahead) is not { Kind: TokenKind.Number } over
            || !IsSlash(tokens, ahead + 1)
            || tokens.At(ahead + 2) is not { Kind: TokenKind.Number, Glued: true } under)
        {
            return null;
        }

        return over.Value >= 1 && over.Value < under.Value && under.Value is 2 or 3 or 4 or 5 or 8 or 16
            ? over.Value / under.Value
            : null;
    }

    /// <summary>Whether a slash stands there that touches what is before it.</summary>
    public static bool IsSlash(TokenCursor tokens, int ahead) => tokens.IsMark(ahead, "/") && tokens.IsGlued(ahead);
}
