using System.Diagnostics;
using System.Text.RegularExpressions;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Whole;

/// <summary>The built program as a service, against the stand-in.</summary>
public sealed partial class ServiceTests : IAsyncLifetime, IDisposable
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
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, "ratio 3:1 250 ml"));
        using var service = Serve();
        var log = service.StandardError.ReadToEndAsync();
        var answer = (await standIn.Until(1, call => call.Method == "sendMessage"))[0];
        Assert.Equal(Nora, answer.Chat);
        Assert.Contains("187.5 ml", answer.Text, StringComparison.Ordinal);
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
            StandInUpdates.Message(41, Nora, 1, "ratio 3:1 250 ml"),
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
    public async Task Who_claims_it_is_told_what_is_due_and_their_press_is_answered()
    {
        var due = TimeProvider.System.GetUtcNow().AddSeconds(20);
        using (var file = Opened())
        {
            CoatedPiece.WriteInto(file, due - CoatedPiece.WindowOpensAfter());
        }

        using var service = Serve();
        var code = await ClaimCode(service.StandardError);
        var log = service.StandardError.ReadToEndAsync();
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, $"join {code}", at: TimeProvider.System.GetUtcNow()));
        await standIn.Until(1, call => Says(call, "Welcome, Nora."));

        var ping = (await standIn.Until(1, call => Says(call, "Recoat window open for 1")))[0];
        Assert.Equal(Nora, ping.Chat);
        Assert.InRange(ping.At, due, due.AddSeconds(30));
        standIn.Updates.Add(StandInUpdates.Press(42, Nora, 2, "p1", ping.DataOf("Record"), Nora));
        await standIn.Until(1, call => call.Method == "answerCallbackQuery");
        await standIn.Until(1, call => Says(call, "30 × 30 cm"));

        await End(service);
        Assert.Equal(0, service.ExitCode);
        Assert.Single(standIn.Sent, call => Says(call, "Recoat window open"));
        Assert.DoesNotContain("TestOnly", await log, StringComparison.Ordinal);
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

    [Fact]
    public async Task It_can_be_asked_whether_it_is_ready()
    {
        Found();
        var port = ("Health__Port", $"{FreePort.Any()}");
        Assert.Equal(1, (await BuiltProgram.Run(home, ["health"], variables: port)).Code);
        var greeting = new TaskCompletionSource();
        standIn.Script("deleteWebhook", new Answer(async context =>
        {
            await greeting.Task;
            await Answer.Raw(200, "application/json", """{"ok":true,"result":true}""").Write(context);
        }));
        using var service = Serve(port);
        await standIn.Until(1, call => call.Method == "deleteWebhook");
        var ended = await BuiltProgram.Run(home, ["health"], variables: port);
        Assert.Equal((1, "the chat service has not answered yet"), (ended.Code, ended.Out.Trim()));

        // Answered is the greeting; the first poll may wait for half a minute.
        greeting.SetResult();
        await standIn.Until(1, call => call.Method == "getUpdates");
        ended = await BuiltProgram.Run(home, ["health"], variables: port);
        Assert.Equal((0, "ready"), (ended.Code, ended.Out.Trim()));
        await End(service);
    }

    [Fact]
    public async Task The_backup_that_a_steward_asks_for_comes_as_a_file_that_can_be_brought_back()
    {
        Found();
        var backups = Path.Combine(Folder, "backups");
        using var service = Serve();
        standIn.Updates.Add(StandInUpdates.Message(41, Nora, 1, "backup"));
        var (name, content) = (await standIn.Until(1, call => call.Method == "sendDocument"))[0].File!.Value;
        Assert.Equal(File.ReadAllBytes(Path.Combine(backups, name)), content);

        await End(service);
        var arrived = Path.Combine(home.Path, name);
        File.WriteAllBytes(arrived, content);
        var restored = await BuiltProgram.Run(home, ["restore", arrived, "--data", Folder]);
        Assert.Equal((0, ""), (restored.Code, restored.Error));
        using var file = Opened();
        Assert.Equal("Nora", file.Read(view => view.Members.ByAccount(Nora))?.Name);
    }

    private string Folder => Path.Combine(home.Path, "studio");

    // Nora keeps house, and so the one with the next account belongs to it.
    private void Found()
    {
        using var file = Opened();
        Studios.Found(file, TimeProvider.System.GetUtcNow().AddDays(-1), (Nora, "Nora"), (Nora + 1, "Pia"));
    }

    private StudioFile Opened()
    {
        Directory.CreateDirectory(Folder);
        return StudioFile.Open(Path.Combine(Folder, "studio.db"));
    }

    private static bool Says(Call call, string words) =>
        call.IsSend && call.Text!.Contains(words, StringComparison.Ordinal);

    private static async Task<string> ClaimCode(StreamReader log)
    {
        using var enough = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        while (await log.ReadLineAsync(enough.Token) is { } line)
        {
            if (ClaimLine().Match(line) is { Success: true } shown)
            {
                return shown.Groups[1].Value;
            }
        }

        throw new InvalidOperationException("No code was shown.");
    }

    [GeneratedRegex("join ([A-Z]{11})$")]
    private static partial Regex ClaimLine();

    private Process Serve(params (string Name, string Value)[] variables) => BuiltProgram.Start(
        home,
        ["serve", "--data", Folder],
        [("Telegram__Token", StandIn.Token), ("Telegram__ApiUrl", standIn.Url.ToString()), .. variables]);

    private static async Task End(Process service)
    {
        using var signal = Process.Start("kill", ["-TERM", $"{service.Id}"]);
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        await service.WaitForExitAsync(enough.Token);
    }
}
