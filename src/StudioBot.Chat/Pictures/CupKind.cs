namespace StudioBot.Chat.Pictures;

/// <summary>What is in a cup.</summary>
internal enum CupKind
{
    /// <summary>The base coat.</summary>
    Base,

    /// <summary>A colour.</summary>
    Colour,

    /// <summary>The cell activator.</summary>
    Activator,
}
