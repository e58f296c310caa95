using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class WhenSlotTests
{
    [Theory]
    [InlineData("fri 18:00", "when=2026-11-27T18:00")]   // today is a Wednesday
    [InlineData("wednesday", "when=2026-12-02")]   // a week on
    [InlineData("tomorrow", "when=2026-11-26")]
    [InlineData("28 Nov", "when=2026-11-28")]
    [InlineData("Jan 3", "when=2027-01-03")]
    [InlineData("28 Nov 10am", "when=2026-11-28T10:00")]
    [InlineData("2026-12-24", "when=2026-12-24")]
    [InlineData("at 9:00", "when=2026-11-26T09:00")]   // today's is over: it is ten
    [InlineData("at 11:30", "when=2026-11-25T11:30")]
    public void A_promise_is_for_the_next_such_day(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new WhenSlot(isPast: false, "when"), typed));

    [Theory]
    [InlineData("tuesday", "date=2026-11-24")]
    [InlineData("wednesday", "date=2026-11-25")]
    [InlineData("yesterday", "date=2026-11-24")]
    [InlineData("28 Nov", "date=2025-11-28")]
    [InlineData("20 Nov 2024", "date=2024-11-20")]
    [InlineData("20th nov", "date=2026-11-20")]
    public void A_record_is_of_the_last_such_day(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new WhenSlot(isPast: true, "date"), typed));

    [Theory]
    [InlineData("31 Feb", "“31 Feb” is no day of the calendar")]
    [InlineData("29 Feb 2027", "“29 Feb 2027” is no day of the calendar")]
    [InlineData("2026-11-31", "“2026-11-31” is no day of the calendar")]
    [InlineData("11/12", "“11/12” is two days: write the month's name")]
    public void What_no_calendar_has_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new WhenSlot(isPast: false, "when"), typed));
}
