namespace StudioBot.Chat.Reading;

/// <summary>What a token is made of.</summary>
internal enum TokenKind
{
    Number,
    Word,
    Mark,
    NewLine,
}
