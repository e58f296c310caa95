using System.Diagnostics;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Whole;

/// <summary>The built program as a service, against the stand-in.</summary>
public sealed class ServiceTests : IAsyncLifetime, IDisposable
{
    private const long Nora = 7;

    private readonly TempFolder home = new();
    private StandIn standIn = null!;

    public async Task InitializeAsync() => standIn = await StandIn.Start();

    public async Task DisposeAsync() => await standIn.DisposeAsync();

    public void Dispose() => home.Dispose();

    [Fact]
    public async Task It_introduces_itself_answers_and_ends_cleanly()
    {
        Found();
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, "amounts 30cm panel bloom 6 colours"));
        using var service = Serve();
        var log = service.StandardError.ReadToEndAsync();
        var answer = (await standIn.Until(1, call => call.Method == "sendMessage"))[0];
        Assert.Equal(Nora, answer.Chat);
        Assert.Contains("900 cm²", answer.Text, StringComparison.Ordinal);
        await standIn.Until(2, call => call.Method == "setMyCommands");
        var methods = standIn.Calls.Select(call => call.Method).ToList();
        Assert.Equal(["deleteWebhook", "getMe"], methods.Take(2));
        Assert.DoesNotContain(standIn.Calls, call =>
            call.Method == "deleteWebhook"
            && call.Body.TryGetProperty("drop_pending_updates", out var drop)
            && drop.GetBoolean());

        await End(service);
        Assert.Equal(0, service.ExitCode);
        Assert.DoesNotContain("TestOnly", await log, StringComparison.Ordinal);
        Assert.Single(standIn.Sent);
    }

    [Fact]
    public async Task Killed_in_the_middle_it_answers_each_message_after_the_restart()
    {
        Found();
        standIn.Script("sendMessage", Answer.Never);
        standIn.Updates.Add(
            StandInUpdates.Message(41, Nora, 1, "amounts 30cm panel bloom 6 colours"),
            StandInUpdates.Message(42, Nora + 1, 1, "ratio 2:1 90 ml"));
        using (var killed = Serve())
        {
            await standIn.Until(2, call => call.Method == "sendMessage");
            await standIn.Until(2, call => call.Method == "getUpdates");
            killed.Kill();
            await killed.WaitForExitAsync();
        }

        using var service = Serve();
        var sends = await standIn.Until(3, call => call.Method == "sendMessage");
        Assert.Contains("twice", sends[2].Text, StringComparison.Ordinal);
        await End(service);
        Assert.InRange(standIn.Sent.Count, 3, 4);
    }

    [Fact]
    public async Task A_refused_token_ends_it_with_one_clear_line()
    {
        standIn.Script("deleteWebhook", Answer.Unauthorized);
        using var service = Serve();
        var log = await service.StandardError.ReadToEndAsync();
        await service.WaitForExitAsync();
        Assert.Equal(78, service.ExitCode);
        Assert.Contains("refuses the token", log, StringComparison.Ordinal);
        Assert.DoesNotContain("TestOnly", log, StringComparison.Ordinal);
    }

    private string Folder => Path.Combine(home.Path, "studio");

    // Nora keeps house, and so the one with the next account belongs to it.
    private void Found()
    {
        Directory.CreateDirectory(Folder);
        using var file = StudioFile.Open(Path.Combine(Folder, "studio.db"));
        Studios.Found(file, TimeProvider.System.GetUtcNow().AddDays(-1), (Nora, "Nora"), (Nora + 1, "Pia"));
    }

    private Process Serve() => BuiltProgram.Start(
        home,
        ["serve", "--data", Folder],
        ("Telegram__Token", StandIn.Token),
        ("Telegram__ApiUrl", standIn.Url.ToString()));

    private static async Task End(Process service)
    {
        using var signal = Process.Start("kill", ["-TERM", $"{service.Id}"]);
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        await service.WaitForExitAsync(enough.Token);
    }
}
