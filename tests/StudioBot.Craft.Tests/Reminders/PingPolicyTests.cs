using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

public sealed class PingPolicyTests
{
    [Fact]
    public void Only_a_closing_window_may_wake() =>
        Assert.Equal([PingKind.WindowCloses], Enum.GetValues<PingKind>().Where(kind => PingPolicy.Of(kind).MayWake));

    [Fact]
    public void Only_what_is_about_minutes_lapses() => Assert.Equal(
        [PingKind.Torch, PingKind.Drips],
        Enum.GetValues<PingKind>().Where(kind => PingPolicy.Of(kind).Lapses));

    [Fact]
    public void A_coat_leaves_promises_requests_and_the_shelf_alone() => Assert.Equal(
        [PingKind.DueDanger, PingKind.AskedFor, PingKind.StockLow, PingKind.Old, PingKind.Week],
        Enum.GetValues<PingKind>().Where(kind => !PingPolicy.Of(kind).EndsWithCoat));

    [Fact]
    public void An_unknown_kind_has_none() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PingPolicy.Of((PingKind)99));
}
