using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;

namespace StudioBot.Host.Tests.Turns;

public sealed class InventedStudioTests
{
    [Fact]
    public void Its_clock_is_that_of_its_zone()
    {
        using var invented = new InventedStudio(Studios.Practice);
        var nine = new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
        Assert.Equal(new DateTime(2026, 11, 25, 10, 0, 0), invented.Local(nine)); // Vienna in winter: one hour ahead
    }
}
