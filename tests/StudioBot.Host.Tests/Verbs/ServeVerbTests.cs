using Microsoft.Extensions.DependencyInjection;
using Quartz;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Verbs;

public sealed class ServeVerbTests : IDisposable
{
    private readonly TempFolder home = new();

    public void Dispose() => home.Dispose();

    [Fact]
    public void Whatever_ticks_finds_all_it_needs_in_the_service()
    {
        using var file = StudioFile.Open(home.StudioPath);
        Studios.Found(file, DateTimeOffset.UnixEpoch);
        var place = new Workplace(
            new Machine(new Dictionary<string, string>(), AppContext.BaseDirectory, home.Path),
            new Streams(TextReader.Null, TextWriter.Null, TextWriter.Null, true, true),
            TimeProvider.System);
        using var host = ServeVerb.Built(new StudioSettings(home.Path, null, null), place, file, Studios.Practice).Build();

        Assert.All(
            typeof(ServeVerb).Assembly.GetTypes().Where(type => type.IsAssignableTo(typeof(IJob))),
            tick => Assert.NotNull(ActivatorUtilities.CreateInstance(host.Services, tick)));
    }
}
