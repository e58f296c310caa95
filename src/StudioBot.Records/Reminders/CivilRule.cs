namespace StudioBot.Records.Reminders;

/// <summary>A moment by the wall clock, to be worked out again when zones or their rules change.</summary>
/// <param name="Rule">In words of the planner: sunday 09:00.</param>
/// <param name="Zone">The name of the time zone it is meant in.</param>
public sealed record CivilRule(string Rule, string Zone);
