namespace StudioBot.Craft.Reminders;

/// <summary>What a ping is about.</summary>
/// <param name="Kind">The kind of thing.</param>
/// <param name="Id">Which one of them.</param>
public sealed record PingSubject(PingSubjectKind Kind, long Id);
