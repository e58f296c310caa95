using Microsoft.Extensions.Time.Testing;

namespace StudioBot.Host.Tests.Support;

/// <summary>Waits for what loops do, on their clock or on ours; half a minute without success is a failure.</summary>
internal static class Patience
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);

    /// <summary>Lets other work go on until this holds.</summary>
    public static async Task Until(Func<bool> holds)
    {
        using var enough = new CancellationTokenSource(Longest);
        while (!holds())
        {
            Assert.False(enough.IsCancellationRequested, "What was waited for did not happen.");
            await Task.Delay(TimeSpan.FromMilliseconds(1), CancellationToken.None);
        }
    }

    /// <summary>Turns the clock in steps until this holds.</summary>
    public static async Task Until(FakeTimeProvider clock, TimeSpan step, Func<bool> holds)
    {
        using var enough = new CancellationTokenSource(Longest);
        while (!holds())
        {
            Assert.False(enough.IsCancellationRequested, "What was waited for did not happen.");
            clock.Advance(step);
            await Task.Delay(TimeSpan.FromMilliseconds(1), CancellationToken.None);
        }
    }

    /// <summary>Ends a loop and hears how it ended.</summary>
    public static async Task End(Task loop, CancellationTokenSource stop)
    {
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => loop.WaitAsync(Longest));
    }
}
