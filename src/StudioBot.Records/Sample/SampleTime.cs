namespace StudioBot.Records.Sample;

/// <summary>The days of the invented studio, all in 2026 and told in its winter time.</summary>
internal static class SampleTime
{
    public static DateTimeOffset At(int month, int day, int hour, int minute = 0) =>
        new DateTimeOffset(2026, month, day, hour, minute, 0, TimeSpan.FromHours(1)).ToUniversalTime();
}
