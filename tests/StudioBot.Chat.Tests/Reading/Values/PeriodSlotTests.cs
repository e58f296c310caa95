using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class PeriodSlotTests
{
    [Theory]
    [InlineData("2026-11", "month=2026-11")]
    [InlineData("november", "month=2026-11")]   // today is in November
    [InlineData("this month", "month=2026-11")]
    [InlineData("last month", "month=2026-10")]
    [InlineData("december", "month=2025-12")]   // the last one
    [InlineData("2026-13", "“2026-13” is no month: they go to 12")]
    public void A_month_is_named_or_written_as_figures(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PeriodSlot(), typed));
}
