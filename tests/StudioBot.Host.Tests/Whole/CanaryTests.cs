using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Whole;

/// <summary>A whole service, with everything logged and everything going wrong: the token is found nowhere.</summary>
public sealed class CanaryTests : IAsyncLifetime, IDisposable
{
    private const long Nora = 7;
    private const string Secret = "TestOnly";   // what no other word here holds

    private readonly TempFolder home = new();
    private readonly FakeTimeProvider clock = new(TimeProvider.System.GetUtcNow());
    private readonly StringWriter printed = new();
    private readonly CapturedLog everything = new();
    private StandIn standIn = null!;

    private Workplace Place => new(
        new Machine(
            new Dictionary<string, string>
            {
                ["Telegram__Token"] = StandIn.Token,
                ["Telegram__ApiUrl"] = standIn.Url.ToString(),
                ["Studio__Data"] = home.Path,
            },
            AppContext.BaseDirectory,
            home.Path),
        new Streams(new StringReader("stock\n"), TextWriter.Synchronized(printed), TextWriter.Synchronized(printed), true, true),
        clock);

    public async Task InitializeAsync() => standIn = await StandIn.Start();

    public async Task DisposeAsync() => await standIn.DisposeAsync();

    public void Dispose()
    {
        everything.Dispose();
        home.Dispose();
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]      // the service says our own address, token and all, in its troubles
    public async Task The_token_stands_nowhere(bool isEchoed)
    {
        Assert.Contains(Secret, StandIn.Token, StringComparison.Ordinal);
        await Serve(isEchoed);
        Assert.Equal(ExitCode.Done, await new ConfigVerb().Run(new Invocation(), Place, CancellationToken.None));

        var log = printed.ToString();
        Assert.Contains("***", log, StringComparison.Ordinal);
        Assert.True(standIn.Sent.Count(call => call.File is not null) >= 2, "The exports did not go out.");
        var places = new Dictionary<string, string>
        {
            ["log and terminal"] = log,
            ["messages"] = string.Join('\n', standIn.Sent.Select(call => call.Body.GetRawText())),
            ["exports"] = string.Join('\n', standIn.Sent.Select(call => call.File).OfType<(string, byte[] Content)>()
                .Select(file => Encoding.UTF8.GetString(file.Content))),
            ["files"] = string.Join('\n', Directory.EnumerateFiles(home.Path, "*", SearchOption.AllDirectories)
                .Select(path => File.ReadAllText(path, Encoding.Latin1))),
        };
        if (!isEchoed)
        {
            places["everything logged, with nothing masked"] = everything.Text;
        }

        Assert.Empty(places.Where(place => place.Value.Contains(Secret, StringComparison.OrdinalIgnoreCase)).Select(place =>
            place.Key + ": " + place.Value[Math.Max(0, place.Value.IndexOf(Secret, StringComparison.OrdinalIgnoreCase) - 200)..][..300]));
    }

    private async Task Serve(bool isEchoed)
    {
        using var file = StudioFile.Open(home.StudioPath);
        Studios.Found(file, clock.GetUtcNow().AddDays(-1), (Nora, "Nora"));
        Break(isEchoed);
        var found = CheckSettings.Of(Place.Machine, null);
        Assert.Empty(found.Troubles);
        var builder = ServeVerb.Built(found.Settings, Place, file, Studios.Practice);
        builder.Logging.SetMinimumLevel(LogLevel.Trace).AddProvider(everything);
        using var host = builder.Build();
        await host.StartAsync();
        using var source = new ActivitySource("System.Net.Http");
        Say(1, "bought 5 x 500 ml medium 60.00", "room 20C 58%", "export usage", "export stock", "amounts 30cm panel bloom");
        await Patience.Until(clock, TimeSpan.FromSeconds(1), () => standIn.Sent.Count(call => call.File is not null) >= 2);
        await Patience.Until(clock, TimeSpan.FromSeconds(1), () =>
            standIn.Calls.Count(call => call.Method == "getUpdates") > 7
            && file.Write(session => session.Post.NextTryAt()) is null
            && file.Write(session => session.Inbox.Next()).Count == 0);
        Assert.False(source.HasListeners(), "Somebody listens to the addresses of calls.");

        // The last trouble of all, with which it ends.
        standIn.Script("getUpdates", Answer.Unauthorized);
        standIn.Updates.Add(StandInUpdates.Message(90, Nora, 90, "stock", at: clock.GetUtcNow()));
        var lifetime = host.Services.GetRequiredService<IHostApplicationLifetime>();
        await Patience.Until(clock, TimeSpan.FromSeconds(1), () => lifetime.ApplicationStopping.IsCancellationRequested);
        await host.StopAsync();
    }

    private void Break(bool isEchoed)
    {
        var address = isEchoed ? $" {standIn.Url}bot{StandIn.Token}/sendMessage" : "";
        Answer[] troubles =
        [
            Answer.TooMany(3), Answer.BadGateway, Answer.BadJson, Answer.Reset, Answer.No(500, "Internal" + address),
            Answer.No(400, "Bad Request: can't parse entities" + address),
        ];
        standIn.Script("deleteWebhook", Answer.BadGateway, Answer.No(500, "Internal" + address));
        standIn.Script("getUpdates", [Answer.Conflict, .. troubles]);
        standIn.Script("sendMessage", troubles);
        standIn.Script("sendDocument", Answer.Reset, Answer.No(500, "Internal" + address));
        standIn.Script("setMyCommands", Answer.No(400, "Bad Request: BOT_COMMAND_INVALID" + address));
        standIn.Script("answerCallbackQuery", Answer.No(400, "Bad Request: query is too old" + address));
    }

    private void Say(int first, params string[] words)
    {
        standIn.Updates.Add([.. words.Select((line, at) =>
            StandInUpdates.Message(first + at, Nora, first + at, line, at: clock.GetUtcNow()))]);
        standIn.Updates.Add(StandInUpdates.Press(70, Nora, 3, "p1", "~AAAAAAAAAAAAAAAA", Nora));
        standIn.Updates.Add(new JsonObject
        {
            ["update_id"] = 71,
            ["message"] = new JsonObject { ["message_id"] = "not a number" },
        });
    }
}
