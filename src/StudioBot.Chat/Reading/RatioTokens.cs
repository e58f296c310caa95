namespace StudioBot.Chat.Reading;

/// <summary>
/// Numbers that stand to each other: <c>3:1</c>, <c>100:45:5</c>, <c>3 to 1</c>, and what is meant as such.
/// </summary>
/// <param name="Parts">The numbers in order.</param>
/// <param name="Flaw">What is wrong with one of them.</param>
/// <param name="Taken">How many tokens it takes.</param>
internal sealed record RatioTokens(IReadOnlyList<double> Parts, NumberFlaw Flaw, int Taken)
{
    // Spoken ratios end in 1, 2 or 3, or begin with a hundred: 3 to 1, 100 to 45.
    private const double MostSpoken = 3;
    private const double FewestByWeight = 50;

    /// <summary>The ratio that begins with the number now; none where none does.</summary>
    /// <param name="tokens">At a number.</param>
    /// <param name="mayEndInColon">Whether <c>3:</c> at the end of a line is half a ratio.</param>
    public static RatioTokens? Now(TokenCursor tokens, bool mayEndInColon) =>
        Colons(tokens) ?? (mayEndInColon ? Half(tokens) : null) ?? Semicolon(tokens) ?? Spoken(tokens);

    private static RatioTokens? Colons(TokenCursor tokens)
    {
        if (!tokens.IsMark(1, ":"))
        {
            return null;
        }

        List<double> parts = [tokens.Now.Value];
        var flaw = tokens.Now.Flaw;
        var taken = 1;
        while (tokens.IsMark(taken, ":") && (tokens.IsNumber(taken + 1) || tokens.IsGlued(taken + 1)))
        {
            var part = tokens.At(taken + 1)!.Value;
            parts.Add(part.Value);
            flaw = flaw == NumberFlaw.None ? FlawOf(part) : flaw;
            taken += 2;
        }

        return taken == 1 ? null : new RatioTokens(parts, flaw, taken);
    }

    // 3:x is a ratio with a wrong part.
    private static NumberFlaw FlawOf(Token part) => part.Kind == TokenKind.Number ? part.Flaw : NumberFlaw.NotANumber;

    private static RatioTokens? Half(TokenCursor tokens)
    {
        var endsLine = tokens.At(2) is null or { Kind: TokenKind.NewLine };
        return endsLine && tokens.IsMark(1, ":") && tokens.IsGlued(1)
            ? new RatioTokens([tokens.Now.Value], NumberFlaw.None, 2)
            : null;
    }

    // 3;1: the finger slipped from the colon.
    private static RatioTokens? Semicolon(TokenCursor tokens) =>
        tokens.IsMark(1, ";") && tokens.IsGlued(1) && tokens.IsNumber(2) && tokens.IsGlued(2)
            ? new RatioTokens([tokens.Now.Value, tokens.At(2)!.Value.Value], NumberFlaw.NotANumber, 3)
            : null;

    // 3 to 1, but not 20 to 30 ml, nor 10 to 12 as of a clock.
    private static RatioTokens? Spoken(TokenCursor tokens)
    {
        if (!tokens.IsWord(1, "to", "auf") || tokens.At(2) is not { Kind: TokenKind.Number } second)
        {
            return null;
        }

        var isClock = second.Value > MostSpoken && tokens.Now.Value < FewestByWeight;
        var goesOn = isClock
            || UnitTokens.At(tokens, 3) is not null || tokens.IsMark(3, ":") || tokens.IsMark(3, "/");
        return goesOn ? null : new RatioTokens([tokens.Now.Value, second.Value], second.Flaw, 3);
    }
}
