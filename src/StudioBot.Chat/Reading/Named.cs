namespace StudioBot.Chat.Reading;

/// <summary>A name and what it is the name of.</summary>
/// <param name="Kind">What bears it.</param>
/// <param name="Name">As the studio writes it.</param>
internal sealed record Named(NameKind Kind, string Name);
