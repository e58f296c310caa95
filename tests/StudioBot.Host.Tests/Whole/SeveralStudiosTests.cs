using System.Globalization;
using System.Net;
using System.Text.Json;
using StudioBot.Host.Health;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Whole;

/// <summary>One service, several studios: each with its folder, its settings, its token and its own answers.</summary>
public sealed class SeveralStudiosTests : IAsyncDisposable
{
    private const long Nora = 7;

    private readonly TempFolder home = new();
    private readonly StringWriter log = new() { NewLine = "\n" };
    private readonly CancellationTokenSource stop = new();
    private readonly List<StandIn> bots = [];
    private readonly int port = FreePort.Any();

    public async ValueTask DisposeAsync()
    {
        foreach (var bot in bots)
        {
            await bot.DisposeAsync();
        }

        stop.Dispose();
        log.Dispose();
        home.Dispose();
    }

    [Fact]
    public async Task Each_answers_by_its_own_bot_from_its_own_books_and_one_that_is_refused_leaves_the_others_be()
    {
        List<string> folders = [await Studio("fjord"), await Studio("moor"), await Studio("dune")];
        var service = ServeVerb.Serve([.. folders.Select(Settings)], Place, stop.Token);

        for (var at = 0; at < bots.Count; at++)
        {
            Say(bots[at], 1, $"pour {20 + 10 * at}cm panel bloom white");
        }

        for (var at = 0; at < bots.Count; at++)
        {
            var told = (await bots[at].Until(1, call => call.Method == "sendMessage"))[0].Text;
            Assert.Contains($"{20 + 10 * at} × {20 + 10 * at} cm", told, StringComparison.Ordinal);
        }

        using var http = new HttpClient();
        Assert.Equal(HttpStatusCode.OK, (await http.GetAsync(new Uri($"http://127.0.0.1:{port}{HealthPort.Ready}"))).StatusCode);

        bots[0].Script("getUpdates", Answer.Unauthorized);
        Say(bots[0], 2, "stock");
        await Patience.Until(() => log.ToString().Contains("refuses the token", StringComparison.Ordinal));
        Say(bots[2], 2, "note 1 still here");
        await bots[2].Until(2, call => call.Method == "sendMessage");

        await stop.CancelAsync();
        Assert.Equal(ExitCode.Settings, await service);
        Assert.Contains($"set that in the settings of {folders[0]}.", log.ToString(), StringComparison.Ordinal);
        Assert.Contains($" of {folders[1]}: Serving as", log.ToString(), StringComparison.Ordinal);
        foreach (var folder in folders)
        {
            using var file = StudioFile.Open(Path.Combine(folder, "studio.db"));
            Assert.Single(file.Read(view => view.Pieces.All()));
        }
    }

    [Fact]
    public async Task One_token_for_two_is_refused_before_anything_is_served()
    {
        var (fjord, moor) = (await Studio("fjord"), Path.Combine(home.Path, "moor"));
        Directory.CreateDirectory(moor);
        File.Copy(Path.Combine(fjord, "settings.json"), Path.Combine(moor, "settings.json"));

        Assert.Equal(ExitCode.Settings, await ServeVerb.Serve([Settings(fjord), Settings(moor)], Place, stop.Token));
        Assert.Contains($"{fjord} and {moor} have one token", log.ToString(), StringComparison.Ordinal);
        Assert.Empty(bots[0].Calls);
    }

    [Fact]
    public async Task A_studio_named_twice_is_refused()
    {
        var fjord = await Studio("fjord");

        Assert.Equal(ExitCode.Settings, await ServeVerb.Serve([Settings(fjord), Settings(fjord)], Place, stop.Token));
        Assert.Contains("is named twice", log.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_that_can_t_be_opened_is_told_and_the_other_served()
    {
        var (fjord, moor) = (await Studio("fjord"), await Studio("moor"));
        await File.WriteAllTextAsync(Path.Combine(fjord, "studio.db"), "this is no studio, and was never one: it is a text");
        var service = ServeVerb.Serve([Settings(fjord), Settings(moor)], Place, stop.Token);
        Say(bots[1], 1, "stock");
        await bots[1].Until(1, call => call.Method == "sendMessage");
        using var http = new HttpClient();
        using var health = await http.GetAsync(new Uri($"http://127.0.0.1:{port}{HealthPort.Ready}"));
        Assert.Equal(HttpStatusCode.ServiceUnavailable, health.StatusCode);
        Assert.StartsWith($"{fjord}: could not be opened", await health.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        await stop.CancelAsync();
        Assert.NotEqual(ExitCode.Done, await service);
        Assert.Contains(fjord, log.ToString(), StringComparison.Ordinal);
        Assert.Empty(bots[0].Calls);
    }

    private Workplace Place => new(
        new Machine(new Dictionary<string, string>(), AppContext.BaseDirectory, home.Path),
        new Streams(TextReader.Null, TextWriter.Null, TextWriter.Synchronized(log), true, true),
        TimeProvider.System);

    private CheckedSettings Settings(string folder) => CheckSettings.Of(Place.Machine, folder);

    // Its bot, its settings, and its steward.
    private async Task<string> Studio(string name)
    {
        var token = string.Create(CultureInfo.InvariantCulture, $"{1000 + bots.Count}:TestOnlyTestOnlyTestOnlyTestOnly{1000 + bots.Count}");
        var bot = await StandIn.Start(token);
        bots.Add(bot);
        var folder = Path.Combine(home.Path, name);
        Directory.CreateDirectory(folder);
        await File.WriteAllTextAsync(Path.Combine(folder, "settings.json"), JsonSerializer.Serialize(new
        {
            Telegram = new { Token = token, ApiUrl = bot.Url },
            Health = new { Port = bots.Count == 1 ? port : 0 },
        }));
        using var file = StudioFile.Open(Path.Combine(folder, "studio.db"));
        Studios.Found(file, TimeProvider.System.GetUtcNow().AddDays(-1), (Nora, "Nora"));
        return folder;
    }

    private static void Say(StandIn bot, int at, string words) =>
        bot.Updates.Add(StandInUpdates.Message(at, Nora, at, words, at: TimeProvider.System.GetUtcNow()));
}
