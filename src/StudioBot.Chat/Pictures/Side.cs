namespace StudioBot.Chat.Pictures;

/// <summary>To which side of its room a line of words is set.</summary>
internal enum Side
{
    /// <summary>It begins at the left.</summary>
    Left,

    /// <summary>It stands in the middle.</summary>
    Middle,

    /// <summary>It ends at the right.</summary>
    Right,
}
