using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Tests.Sending;

public sealed class BellTests
{
    private static readonly TimeSpan Long = TimeSpan.FromHours(1);

    private readonly FakeTimeProvider clock = new();

    [Fact]
    public async Task A_ring_before_the_wait_is_heard_once()
    {
        var bell = new Bell(clock);
        bell.Ring();
        bell.Ring();
        await bell.Wait(Long, CancellationToken.None);
        Assert.False(bell.Wait(Long, CancellationToken.None).IsCompleted);
    }

    [Fact]
    public async Task Without_a_ring_it_waits_no_longer_than_told()
    {
        var waiting = new Bell(clock).Wait(Long, CancellationToken.None);
        clock.Advance(Long);
        await waiting.WaitAsync(TimeSpan.FromSeconds(30));
    }

    [Fact]
    public async Task It_ends_with_its_loop()
    {
        using var stop = new CancellationTokenSource();
        var waiting = new Bell(clock).Wait(Long, stop.Token);
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
    }
}
