using StudioBot.Host.Sending;

namespace StudioBot.Host.Tests.Sending;

public sealed class BackoffTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 4)]
    [InlineData(8, 128)]
    [InlineData(9, 256)]
    [InlineData(10, 300)]   // never longer than five minutes
    [InlineData(5000, 300)]
    public void The_wait_doubles_up_to_five_minutes_and_is_at_most_a_quarter_longer(int tries, double seconds)
    {
        var backoff = new Backoff(new Random(7));
        Assert.All(Enumerable.Range(0, 100), _ =>
            Assert.InRange(backoff.After(tries).TotalSeconds, seconds, Math.Min(seconds * 1.25, 300)));
    }

    [Fact]
    public void Two_waits_are_rarely_the_same()
    {
        var backoff = new Backoff(new Random(7));
        Assert.NotEqual(backoff.After(3), backoff.After(3));
    }
}
