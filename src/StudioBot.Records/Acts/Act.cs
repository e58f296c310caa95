namespace StudioBot.Records.Acts;

/// <summary>One recorded message and all it wrote; what undo undoes.</summary>
/// <param name="Id">The studio's own number for it; later acts have greater ones.</param>
/// <param name="Kind">The word of the command: used, pour; or opening, undo.</param>
/// <param name="Author">Who wrote it; none: the studio itself.</param>
/// <param name="For">For whom it was written; none: for the author.</param>
/// <param name="ChatId">In which chat; none where there was none.</param>
/// <param name="MessageId">By which message; none where there was none.</param>
/// <param name="Words">As typed.</param>
/// <param name="HappenedAt">The moment it is about, UTC.</param>
/// <param name="WrittenAt">When it was typed, UTC.</param>
/// <param name="UndoesId">The act that it takes back; none where it takes back none.</param>
/// <param name="UndoneById">The act that took it back; none while it holds.</param>
public sealed record Act(
    long Id,
    string Kind,
    ActMember? Author,
    ActMember? For,
    long? ChatId,
    long? MessageId,
    string Words,
    DateTimeOffset HappenedAt,
    DateTimeOffset WrittenAt,
    long? UndoesId,
    long? UndoneById)
{
    /// <summary>Nobody has taken it back.</summary>
    public bool Holds => UndoneById is null;

    /// <summary>Whose it is: for whom it was written, else who wrote it; none: the studio itself.</summary>
    public ActMember? Whose => For ?? Author;
}
