namespace StudioBot.Craft.Reminders;

/// <summary>The kinds of thing a ping can be about. Kept by name: a name never changes.</summary>
public enum PingSubjectKind
{
    /// <summary>A piece.</summary>
    Piece,

    /// <summary>One coat on a piece.</summary>
    Coat,

    /// <summary>A mixed batch.</summary>
    Batch,

    /// <summary>A material.</summary>
    Material,

    /// <summary>One delivery of a material.</summary>
    Lot,

    /// <summary>What somebody asked to be reminded of.</summary>
    Request,

    /// <summary>The studio as a whole.</summary>
    Studio,
}
