using Microsoft.Extensions.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Settings;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Telegram;

public sealed class BotClientsTests
{
    [Fact]
    public async Task No_log_at_any_level_holds_the_token_whatever_happens()
    {
        await using var standIn = await StandIn.Start();
        standIn.Script("sendMessage", Answer.Reset, Answer.BadGateway, Answer.BadJson, Answer.TooMany(3), Answer.Blocked);
        using var captured = new CapturedLog();
        using var factory = LoggerFactory.Create(logging => logging.SetMinimumLevel(LogLevel.Trace).AddProvider(captured));
        var clients = new BotClients(new StudioSettings("/nowhere", new Secret(StandIn.Token), standIn.Url));
        var log = factory.CreateLogger<TelegramWire>();
        var wire = new TelegramWire(clients.Calling, new CallGuard(TimeSpan.FromSeconds(20), TimeProvider.System), log);
        var deliveries = new List<Delivery>();
        for (var tries = 0; tries < 6; tries++)
        {
            deliveries.Add(await wire.Send(7, Letters.Saying("250 mL"), CancellationToken.None));
        }

        await standIn.DisposeAsync();
        deliveries.Add(await wire.Send(7, Letters.Saying("250 mL"), CancellationToken.None));
        Assert.True(await wire.AnswerPress("p", null, CancellationToken.None) is false);
        Assert.DoesNotContain(StandIn.Token, captured.Text + string.Join('\n', deliveries), StringComparison.Ordinal);
        Assert.NotEmpty(captured.Text);
    }
}
