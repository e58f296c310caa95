namespace StudioBot.Chat.Reading;

/// <summary>The tokens of a message, and how far they are read.</summary>
internal sealed class TokenCursor(IReadOnlyList<Token> tokens)
{
    private int _at;

    public bool IsAtEnd => _at >= tokens.Count;

    public Token Now => tokens[_at];

    /// <summary>The token so many places on; none behind the end.</summary>
    public Token? At(int ahead) => _at + ahead < tokens.Count ? tokens[_at + ahead] : null;

    public bool IsNumber(int ahead) => At(ahead) is { Kind: TokenKind.Number };

    public bool IsWord(int ahead, params ReadOnlySpan<string> words) =>
        At(ahead) is { Kind: TokenKind.Word } token && words.Contains(token.Lower);

    public bool IsMark(int ahead, string mark) => At(ahead) is { Kind: TokenKind.Mark } token && token.Lower == mark;

    /// <summary>Whether a token stands there with no blank before it.</summary>
    public bool IsGlued(int ahead) => At(ahead) is { Glued: true };

    public void Pass(int count) => _at += count;
}
