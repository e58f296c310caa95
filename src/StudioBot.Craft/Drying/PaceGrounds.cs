namespace StudioBot.Craft.Drying;

/// <summary>What a room's pace rests on.</summary>
public enum PaceGrounds
{
    /// <summary>No reading at all: 20 °C and 55 % were assumed.</summary>
    Assumed,

    /// <summary>All the readings there are: none is of the last week.</summary>
    OlderReadings,

    /// <summary>The last week's readings.</summary>
    LastWeek,
}
