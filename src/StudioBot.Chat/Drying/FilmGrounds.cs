namespace StudioBot.Chat.Drying;

/// <summary>What the film of a piece rests on.</summary>
public enum FilmGrounds
{
    /// <summary>What was poured on it, less what stayed in the cups and ran off.</summary>
    Poured,

    /// <summary>Its technique, with the film this studio found for it.</summary>
    Technique,

    /// <summary>The usual technique: nobody knows its own any more.</summary>
    UsualTechnique,
}
