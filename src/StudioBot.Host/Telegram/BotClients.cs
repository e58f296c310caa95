using Microsoft.Extensions.DependencyInjection;
using StudioBot.Host.Settings;
using Telegram.Bot;

namespace StudioBot.Host.Telegram;

/// <summary>The library's clients: one that polls and one for everything else, so that a poll holds nothing
/// up.</summary>
/// <remarks>Neither repeats anything by itself, and neither's calls are logged: the address of each holds the
/// token.</remarks>
internal sealed class BotClients(IHttpClientFactory http, StudioSettings settings)
{
    /// <summary>The longest a poll may take: its own 25 s and the way there and back.</summary>
    public static readonly TimeSpan LongestPoll = TimeSpan.FromSeconds(45);

    /// <summary>The longest any other call may take.</summary>
    public static readonly TimeSpan LongestCall = TimeSpan.FromSeconds(20);

    private const string PollName = "chat service, polls";
    private const string CallName = "chat service, calls";

    // Above what the guards allow, so that it is they who end a call.
    private static readonly TimeSpan Margin = TimeSpan.FromSeconds(15);

    /// <summary>Polls.</summary>
    public ITelegramBotClient Polling { get; } = Client(http.CreateClient(PollName), settings);

    /// <summary>Does everything else.</summary>
    public ITelegramBotClient Calling { get; } = Client(http.CreateClient(CallName), settings);

    /// <summary>What the clients need.</summary>
    public static void AddTo(IServiceCollection services)
    {
        services.AddHttpClient(PollName, client => client.Timeout = LongestPoll + Margin).RemoveAllLoggers();
        services.AddHttpClient(CallName, client => client.Timeout = LongestCall + Margin).RemoveAllLoggers();
    }

    private static TelegramBotClient Client(HttpClient http, StudioSettings settings)
    {
        var token = settings.Token ?? throw new InvalidOperationException("Without a token there is no client.");

        // One attempt, and no waiting inside a call: the next try of a send stands in its row.
        var options = new TelegramBotClientOptions(token.Reveal(), settings.ApiUrl?.GetLeftPart(UriPartial.Authority))
        {
            RetryCount = 1,
            RetryThreshold = 0,
        };
        return new TelegramBotClient(options, http);
    }
}
