using StudioBot.Craft.Flow;

namespace StudioBot.Craft.Tests.Flow;

public sealed class TraceTests
{
    [Fact]
    public void A_trail_that_never_was_is_no_trace() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Trace(TimeSpan.Zero));

    [Fact]
    public void A_longer_trail_is_a_longer_trace() =>
        Assert.True(new Trace(TimeSpan.FromSeconds(2)) > new Trace(TimeSpan.FromSeconds(1.5)));
}
