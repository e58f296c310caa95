using Microsoft.Extensions.Logging.Abstractions;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Telegram;

public sealed class ArrivalTests : IAsyncLifetime
{
    private StandIn standIn = null!;

    public async Task InitializeAsync() => standIn = await StandIn.Start();

    public async Task DisposeAsync() => await standIn.DisposeAsync();

    [Fact]
    public async Task A_webhook_is_taken_away_and_what_waits_stays()
    {
        Assert.Equal(StandIn.BotName, (await Arrival().Introduce(CancellationToken.None))?.Username);
        Assert.Equal(["deleteWebhook", "getMe"], standIn.Calls.Select(call => call.Method));
        Assert.False(standIn.Calls[0].Body.TryGetProperty("drop_pending_updates", out var drop) && drop.GetBoolean());
    }

    [Theory]
    [InlineData(401)]
    [InlineData(404)]   // what a misspelt token gets
    public async Task A_refused_token_is_told_from_a_service_that_is_down(int code)
    {
        standIn.Script("deleteWebhook", Answer.No(code, "no"));
        Assert.Null(await Arrival().Introduce(CancellationToken.None));
    }

    [Fact]
    public async Task Asking_who_we_are_is_repeated()
    {
        standIn.Script("getMe", Answer.BadGateway);
        Assert.NotNull(await Arrival().Introduce(CancellationToken.None));
        Assert.Equal(2, standIn.Calls.Count(call => call.Method == "getMe"));
    }

    private Arrival Arrival() => new(
        Bots.At(standIn).Calling,
        new CallGuard(TimeSpan.FromSeconds(20), TimeProvider.System),
        new Backoff(new Random(1)),
        TimeProvider.System,
        NullLogger<Arrival>.Instance);
}
