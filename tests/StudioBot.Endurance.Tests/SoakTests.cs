using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>The published service at steady work: a message every two seconds, some hundred times what a studio of twenty
/// writes. <c>STUDIOBOT_SOAK</c> is for how many seconds; its open files are held always, its memory in runs of
/// half an hour and over, since the runtime settles in the first minutes.</summary>
[Collection(Alone.Name)]
public sealed class SoakTests(ITestOutputHelper output)
{
    private const int Settled = 1800;
    private const double MostGrowth = 1.05;
    private const int SomeHandles = 5;

    private static readonly TimeSpan Between = TimeSpan.FromSeconds(2);

    [Fact]
    public async Task It_grows_no_heavier()
    {
        var seconds = Printed.Setting("STUDIOBOT_SOAK", 30);
        var messages = seconds / (int)Between.TotalSeconds;
        await using var crew = await Crew.Founded(1, 100);
        crew.Serve();
        await crew.Ready();
        for (var message = 0; message < messages / 2; message++)
        {
            await crew.TellAndWait(Between);
        }

        var before = crew.Weight();
        for (var message = messages / 2; message < messages; message++)
        {
            await crew.TellAndWait(Between);
        }

        var after = crew.Weight();
        var (code, _) = await crew.End();
        output.Print(
            $"soak: {messages} messages in {seconds} s, memory {before.MiB:0.0} to {after.MiB:0.0} MiB, open files {before.Handles} to {after.Handles}");
        Assert.Equal(0, code);
        Assert.True(after.Handles <= before.Handles + SomeHandles);
        Assert.True(seconds < Settled || after.MiB <= before.MiB * MostGrowth);
    }
}
