using StudioBot.Records.Members;

namespace StudioBot.Records.Acts;

/// <summary>An act as it begins.</summary>
/// <param name="Kind">The word of the command, 1 to 20 characters.</param>
/// <param name="Author">Who writes; none: the studio itself.</param>
/// <param name="Words">As typed; at least one character.</param>
/// <param name="WrittenAt">When it was typed.</param>
public sealed record NewAct(string Kind, Member? Author, string Words, DateTimeOffset WrittenAt)
{
    /// <summary>For whom it is written, where that is somebody else.</summary>
    public Member? For { get; init; }

    /// <summary>In which chat.</summary>
    public long? ChatId { get; init; }

    /// <summary>By which message.</summary>
    public long? MessageId { get; init; }

    /// <summary>The moment it is about; unless set, when it was typed.</summary>
    public DateTimeOffset HappenedAt { get; init; } = WrittenAt;
}
