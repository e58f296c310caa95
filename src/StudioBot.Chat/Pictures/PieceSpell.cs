namespace StudioBot.Chat.Pictures;

/// <summary>What a piece does for a while.</summary>
internal enum PieceSpell
{
    /// <summary>Nobody noted how far it was.</summary>
    Unnoted,

    /// <summary>It dries.</summary>
    Dried,

    /// <summary>It is to be dry between these days, eight times in ten.</summary>
    Likely,

    /// <summary>It is dry and waits for its coat.</summary>
    Waits,

    /// <summary>Its coat cures.</summary>
    Cures,

    /// <summary>Its next coat bonds.</summary>
    Window,

    /// <summary>Its coat failed and is to be sanded.</summary>
    Failed,
}
