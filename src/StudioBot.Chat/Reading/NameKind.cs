namespace StudioBot.Chat.Reading;

/// <summary>What a studio gives names to.</summary>
internal enum NameKind
{
    Material,
    Recipe,
    Technique,
    Member,
    Room,
}
