using StudioBot.Host.Tests.Support;
using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>A hundred thousand updates that are broken in themselves stop nothing. <c>STUDIOBOT_SEED</c> repeats a run,
/// <c>STUDIOBOT_UPDATES</c> changes its length.</summary>
[Collection(Alone.Name)]
public sealed class MangledUpdatesTests(ITestOutputHelper output)
{
    [Fact]
    public async Task A_hundred_thousand_mangled_updates_stop_nothing()
    {
        var seed = Printed.Setting("STUDIOBOT_SEED", Environment.TickCount);
        var count = Printed.Setting("STUDIOBOT_UPDATES", 100_000);
        output.Print($"mangled updates: seed {seed}, {count} to come");
        output.Print($"{await new MangledRun(seed, count).Run()}");
    }
}
