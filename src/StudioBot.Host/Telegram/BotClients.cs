using StudioBot.Host.Settings;
using Telegram.Bot;

namespace StudioBot.Host.Telegram;

/// <summary>The library's clients: one that polls and one for everything else, so that a poll holds nothing
/// up.</summary>
/// <remarks>Neither repeats anything by itself, and nothing logs a call: the address of each holds the token.
/// </remarks>
internal sealed class BotClients(StudioSettings settings)
{
    /// <summary>The longest a poll may take: its own 25 s and the way there and back.</summary>
    public static readonly TimeSpan LongestPoll = TimeSpan.FromSeconds(45);

    /// <summary>The longest any other call may take.</summary>
    public static readonly TimeSpan LongestCall = TimeSpan.FromSeconds(20);

    // Above what the guards allow, so that it is they who end a call.
    private static readonly TimeSpan Margin = TimeSpan.FromSeconds(15);

    // After that a new way is asked for, as the service may have moved.
    private static readonly TimeSpan LongestWay = TimeSpan.FromMinutes(10);

    /// <summary>Polls.</summary>
    public ITelegramBotClient Polling { get; } = Client(settings, LongestPoll);

    /// <summary>Does everything else.</summary>
    public ITelegramBotClient Calling { get; } = Client(settings, LongestCall);

    private static TelegramBotClient Client(StudioSettings settings, TimeSpan longest)
    {
        var token = settings.Token ?? throw new InvalidOperationException("Without a token there is no client.");

        // One attempt, and no waiting inside a call: the next try of a send stands in its row.
        var options = new TelegramBotClientOptions(token.Reveal(), settings.ApiUrl?.GetLeftPart(UriPartial.Authority))
        {
            RetryCount = 1,
            RetryThreshold = 0,
        };
        var http = new SocketsHttpHandler { PooledConnectionLifetime = LongestWay };
        return new TelegramBotClient(options, new HttpClient(http) { Timeout = longest + Margin });
    }
}
