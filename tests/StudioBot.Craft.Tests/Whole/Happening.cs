namespace StudioBot.Craft.Tests.Whole;

/// <summary>What may happen to a studio between two looks at its reminders.</summary>
internal enum Happening
{
    TimePasses,
    MinutesPass,
    Downtime,
    ClockSetBack,
    Poured,
    EstimateSlides,
    NotYet,
    Coated,
    CoatUndone,
    Sold,
    Binned,
    WeekMuted,
    WeekWanted,
    Moved,
}
