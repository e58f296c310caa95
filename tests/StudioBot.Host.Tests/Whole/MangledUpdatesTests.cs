using System.Globalization;
using StudioBot.Host.Tests.Support;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Whole;

/// <summary>Updates that are broken in themselves stop nothing. A failure prints the seed, and STUDIOBOT_SEED takes it
/// back.</summary>
public sealed class MangledUpdatesTests(ITestOutputHelper output)
{
    [Fact]
    public async Task Two_thousand_mangled_updates_stop_nothing()
    {
        var seed = int.TryParse(
            Environment.GetEnvironmentVariable("STUDIOBOT_SEED"), CultureInfo.InvariantCulture, out var given)
            ? given
            : Random.Shared.Next();
        output.WriteLine(await new MangledRun(seed, 2_000).Run());
    }
}
