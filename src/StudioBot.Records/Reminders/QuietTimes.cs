namespace StudioBot.Records.Reminders;

/// <summary>Hours in which nobody is pinged, by the wall clock.</summary>
/// <param name="From">From when; it may be later than the end, over midnight.</param>
/// <param name="Until">Until when.</param>
public sealed record QuietTimes(TimeOnly From, TimeOnly Until);
