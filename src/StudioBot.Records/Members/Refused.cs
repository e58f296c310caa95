namespace StudioBot.Records.Members;

/// <summary>Something that was not done for somebody.</summary>
/// <param name="UserId">Their account; 0 once they are forgotten.</param>
/// <param name="Standing">What they were to the studio at that moment.</param>
/// <param name="Name">As they were called; cut where it is long.</param>
/// <param name="Words">What they said or pressed; cut where it is long.</param>
/// <param name="Why">Why not, in a few words.</param>
/// <param name="At">When, UTC.</param>
public sealed record Refused(
    long UserId, Standing Standing, string Name, string Words, string Why, DateTimeOffset At);
