using System.Diagnostics;

namespace StudioBot.Endurance.Tests;

/// <summary>How long is waited for what another process does, in that process's time.</summary>
internal static class Patience
{
    /// <summary>After that it will not happen.</summary>
    public static readonly TimeSpan Enough = TimeSpan.FromMinutes(1);

    /// <summary>Looks every millisecond until it holds.</summary>
    public static async Task Until(Func<bool> holds)
    {
        var began = Stopwatch.GetTimestamp();
        while (!holds())
        {
            Assert.True(Stopwatch.GetElapsedTime(began) < Enough, "What was waited for did not happen.");
            await Task.Delay(TimeSpan.FromMilliseconds(1), CancellationToken.None);
        }
    }
}
