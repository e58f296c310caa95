using StudioBot.Craft.Coats;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

/// <summary>Quiet from 22:00 to 8:00; two hours' warning, one hour to coat.</summary>
public sealed class WindowPingsTests
{
    [Theory]
    // By day: both are said.
    [InlineData("5 10:00", "5 18:00", "WindowOpens 5 10:00, WindowCloses 5 16:00")]
    // Closes in the evening, warned of early enough.
    [InlineData("5 15:00", "5 22:30", "WindowOpens 5 15:00, WindowCloses 5 20:30")]
    // Closes in quiet hours, or within an hour after them: before bedtime.
    [InlineData("5 20:00", "6 03:00", "WindowOpens 5 20:00, WindowTonight 5 21:00")]
    [InlineData("5 15:00", "5 23:30", "WindowOpens 5 15:00, WindowTonight 5 21:00")]
    [InlineData("5 20:00", "6 08:30", "WindowOpens 5 20:00, WindowTonight 5 21:00, WindowCloses 6 08:00")]
    // Opens at the moment at which the night's closing is said: once.
    [InlineData("5 21:00", "6 03:00", "WindowTonight 5 21:00")]
    [InlineData("5 21:30", "6 03:00", "WindowTonight 5 21:00, WindowOpens 5 21:30")]
    // Opens in the night and closes in it: before bedtime only.
    [InlineData("5 23:30", "6 05:00", "WindowTonight 5 21:00")]
    // Opens in the night, closes by day: in the morning.
    [InlineData("6 02:00", "6 14:00", "WindowOpens 6 08:00, WindowCloses 6 12:00")]
    // The warning falls in the night, and the morning leaves time: one is enough then.
    [InlineData("6 02:00", "6 09:30", "WindowCloses 6 08:00")]
    // A short window is warned of at its half.
    [InlineData("5 10:00", "5 12:00", "WindowOpens 5 10:00, WindowCloses 5 11:00")]
    public void Whoever_wants_to_coat_is_awake(string opens, string closes, string said) =>
        Assert.Equal(said, Said(opens, closes, "5 09:00", wakes: false));

    [Theory]
    [InlineData("5 20:00", "6 03:00", "WindowOpens 5 20:00, WindowTonight 5 21:00, WindowCloses 6 01:00")]
    [InlineData("5 10:00", "5 18:00", "WindowOpens 5 10:00, WindowCloses 5 16:00")]
    public void Who_asked_to_be_woken_is_told_once_more(string opens, string closes, string said) =>
        Assert.Equal(said, Said(opens, closes, "5 09:00", wakes: true));

    [Theory]
    [InlineData("5 21:30", false, "WindowTonight 5 21:30")]      // past bedtime's hour, still awake: at once
    [InlineData("5 22:30", false, "")]                           // the coat's own reply has said it
    [InlineData("5 22:30", true, "WindowCloses 6 03:00")]
    [InlineData("6 06:00", true, "")]                            // closed
    public void Nothing_is_planned_into_the_past(string now, bool wakes, string said) =>
        Assert.Equal(said, Said("5 23:30", "6 05:00", now, wakes));

    [Fact]
    public void A_window_that_may_close_before_it_surely_opens_is_spoken_of_from_its_first_hour()
    {
        var window = new RecoatWindow(
            Plans.At("5 10:00"), Plans.At("5 15:00"), Plans.At("5 14:00"), Plans.At("5 20:00"));

        Assert.Equal(
            "WindowOpens 5 10:00, WindowCloses 5 12:00",
            Text(WindowPings.Plan(window, Plans.Night, Plans.At("5 09:00"), wakes: false)));
    }

    [Fact]
    public void Nobody_is_left_to_sleep_through_a_window_unwarned()
    {
        // Every window of 3 to 24 hours, at every half hour of a day, planned before bedtime.
        for (var opens = Plans.At("5 09:00"); opens < Plans.At("6 09:00"); opens = opens.AddMinutes(30))
        {
            for (var hours = 3; hours <= 24; hours++)
            {
                var closes = opens.AddHours(hours);
                var moments = WindowPings.Plan(Window(opens, closes), Plans.Night, Plans.At("5 09:00"), wakes: false);

                var closing = moments.Where(moment => moment.Kind != PingKind.WindowOpens);
                Assert.All(moments, moment => Assert.False(Plans.Night.IsQuiet(moment.At)));
                Assert.True(
                    closing.Any(moment => AwakeBetween(moment.At, closes) >= WindowPings.TimeToCoat),
                    $"{opens:t} to {closes:t}: {Text(moments)}");
            }
        }
    }

    private static string Said(string opens, string closes, string now, bool wakes) => Text(WindowPings.Plan(
        Window(Plans.At(opens), Plans.At(closes)), Plans.Night, Plans.At(now), wakes));

    private static string Text(IEnumerable<PingMoment> moments) =>
        string.Join(", ", moments.Select(moment => $"{moment.Kind} {moment.At:%d HH:mm}"));

    private static RecoatWindow Window(DateTimeOffset opens, DateTimeOffset closes) =>
        new(opens.AddHours(-2), opens, closes, closes.AddHours(8));

    private static TimeSpan AwakeBetween(DateTimeOffset from, DateTimeOffset to) => TimeSpan.FromMinutes(
        Enumerable.Range(0, (int)(to - from).TotalMinutes)
            .Count(minute => !Plans.Night.IsQuiet(from.AddMinutes(minute))));
}
