using System.Collections.Concurrent;
using StudioBot.Host.Tests.Support;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Whole;

/// <summary>Everything that a network and a service in trouble can answer, at every call that we make: what was sent to us
/// has its effect once, and who is to hear of it hears of it.</summary>
public sealed class NetworkFaultTests(ITestOutputHelper output) : IAsyncLifetime
{
    private const long Nora = ServiceOnClock.Nora;
    private const long Pia = ServiceOnClock.Pia;

    // What Pia sends: a record, a question, its correction, a press and a table.
    private static readonly string[] Answers = ["Studio: 20 °C, 58 %.", "250 ml at 3:1", "90 ml at 2:1", "120 ml at 1:1", ""];

    private StandIn standIn = null!;

    public async Task InitializeAsync() => standIn = await StandIn.Start();

    public async Task DisposeAsync() => await standIn.DisposeAsync();

    [Theory]
    [InlineData("deleteWebhook")]
    [InlineData("getMe")]
    [InlineData("setMyCommands")]
    [InlineData("getUpdates")]
    [InlineData("answerCallbackQuery")]
    [InlineData("sendMessage")]
    [InlineData("sendDocument")]
    [InlineData("editMessageText")]
    public async Task Whatever_comes_back_nothing_is_lost_and_nothing_is_doubled(string method)
    {
        foreach (var fault in Fault.All)
        {
            await Played(method, fault);
        }

        output.WriteLine($"{method}: {Fault.All.Count} answers played, 0 lost, 0 doubled");
    }

    private async Task Played(string method, Fault fault)
    {
        standIn.Forget();

        // What is not taken as it was is taken as plain text.
        var inARow = fault.Kind == Fault.Way.Message ? 1 : 2;
        var faulted = new ConcurrentQueue<Call>();
        var isSend = method is "sendMessage" or "sendDocument" or "editMessageText";
        bool IsHit(Call call) => call.Method == method && (!isSend || call.Chat == Pia);
        await using var service = new ServiceOnClock(standIn) { IsHeld = call => fault.IsHeld && IsHit(call) };
        standIn.Script(
            call =>
            {
                var hits = IsHit(call) && faulted.Count < inARow;
                if (hits)
                {
                    faulted.Enqueue(call);
                }

                return hits;
            },
            [.. Enumerable.Repeat(fault.Answer, inARow)]);
        Say(service);
        await service.Start();
        if (isSend)
        {
            // Nobody waits for Pia's trouble: the clock stands still.
            await Patience.Until(() => Heard(service, faulted, Nora).Any(call => Says(call, "Cupboard")));
        }

        if (fault.Kind == Fault.Way.Token && (method is "deleteWebhook" or "getMe" or "getUpdates"))
        {
            await service.Until(() => service.TokenWasRefused);
            return;
        }

        var isGone = isSend && fault.Kind == Fault.Way.Gone;
        await service.Until(() => isGone
            ? Heard(service, faulted, Nora).Any(call => Says(call, "I can't write to Pia"))
            : Answers.All(words => Heard(service, faulted, Pia).Any(call => Says(call, words))));
        Judge(service, $"{fault} at {method}", fault, [.. faulted], isGone);
    }

    private void Say(ServiceOnClock service)
    {
        var now = service.Clock.GetUtcNow();
        var edit = StandInUpdates.Edit(3, Pia, 2, "ratio 2:1 90 ml", now.ToUnixTimeSeconds(), Pia);
        standIn.Updates.Add(
            StandInUpdates.Message(1, Pia, 1, "room 20C 58%", at: now),
            StandInUpdates.Message(2, Pia, 2, "ratio 3:1 250 ml", at: now),
            edit,
            StandInUpdates.Press(4, Pia, 3, "p1", "ratio 1:1 120 ml", Pia),
            StandInUpdates.Message(5, Pia, 4, "bought 1 x 1 L white 5.00", at: now),
            StandInUpdates.Message(6, Pia, 5, "export stock", at: now),
            StandInUpdates.Message(7, Nora, 6, "room cupboard 23C 45%", at: now));
    }

    private static void Judge(
        ServiceOnClock service, string how, Fault fault, IReadOnlyList<Call> faulted, bool isGone)
    {
        var recorded = service.File.Read(view => view.Acts.Recent(null, service.Clock.GetUtcNow())).Select(act => act.Words);
        Assert.Equal(["bought 1 x 1 L white 5.00", "room 20C 58%", "room cupboard 23C 45%"], recorded.Order());
        foreach (var words in Answers.Where(words => words.Length > 0))
        {
            var arrived = Heard(service, faulted, Pia).Count(call => Says(call, words));
            Assert.True(arrived <= 1, $"{how}: “{words}” arrived {arrived} times");
        }

        var told = Heard(service, faulted, Nora).Count(call => Says(call, "I can't write to Pia"));
        Assert.True(told == (isGone ? 1 : 0), $"{how}: told {told} times");
        Rests(service, fault, faulted, how);
    }

    private static void Rests(ServiceOnClock service, Fault fault, IReadOnlyList<Call> faulted, string how)
    {
        if (faulted[0].Method == "answerCallbackQuery" || fault.Kind is Fault.Way.Message or Fault.Way.Gone)
        {
            return;
        }

        // Two menus are set: of the other nobody said that it has to wait, unless all have to.
        bool IsNext(Call call, Call later) => later.Method == call.Method && later.Chat == call.Chat
            && (call.Method != "setMyCommands" || fault.RestSeconds > 0 || later.Body.GetRawText() == call.Body.GetRawText());

        var least = TimeSpan.FromSeconds(Math.Max(1, fault.RestSeconds));
        foreach (var call in faulted)
        {
            var at = service.Seen.First(seen => seen.Call == call).At;
            var next = service.Seen.SkipWhile(seen => seen.Call != call).Skip(1)
                .FirstOrDefault(seen => IsNext(call, seen.Call));
            Assert.True(next.Call is null || next.At - at >= least, $"{how}: again after {next.At - at}");
        }
    }

    // What arrived in a chat; what came back in trouble did not.
    private static IEnumerable<Call> Heard(ServiceOnClock service, IEnumerable<Call> faulted, long chat) =>
        service.Seen.Select(seen => seen.Call)
            .Where(call => (call.IsSend || call.Method == "editMessageText") && call.Chat == chat)
            .Except(faulted);

    private static bool Says(Call call, string words) =>
        words.Length == 0 ? call.Method == "sendDocument" : call.Text!.Contains(words, StringComparison.Ordinal);
}
