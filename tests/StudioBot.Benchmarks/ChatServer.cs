using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace StudioBot.Benchmarks;

/// <summary>The chat service on loopback, as light as it can be: it hands out messages, takes replies and times each.
/// </summary>
internal sealed class ChatServer : IAsyncDisposable
{
    /// <summary>The token it takes.</summary>
    public const string Token = "123456789:TestOnlyTestOnlyTestOnlyTestOnlyTes";

    private const int MostAtOnce = 100;

    private static readonly byte[] Yes = "{\"ok\":true,\"result\":true}"u8.ToArray();
    private static readonly byte[] Me = Encoding.UTF8.GetBytes(
        "{\"ok\":true,\"result\":{\"id\":123456789,\"is_bot\":true,\"first_name\":\"Studio\",\"username\":\"studio_bot\"}}");

    private readonly WebApplication app;
    private readonly Lock turn = new();
    private readonly Queue<(long Update, string Raw)> waiting = new();
    private readonly Dictionary<long, Queue<long>> asked = [];
    private readonly List<double> latencies = [];
    private TaskCompletionSource more = New();
    private TaskCompletionSource replied = New();
    private TaskCompletionSource polled = New();
    private long updates;
    private int sent;

    private ChatServer(WebApplication app) => this.app = app;

    /// <summary>Where it is.</summary>
    public Uri Url => new(app.Urls.First());

    /// <summary>How many replies came since it was last cleared.</summary>
    public int Replies
    {
        get
        {
            lock (turn)
            {
                return latencies.Count;
            }
        }
    }

    /// <summary>When the last reply came, in ticks of the stopwatch.</summary>
    public long LastReplyAt { get; private set; }

    /// <summary>How long each reply took since the last clearing, in milliseconds, sorted.</summary>
    public IReadOnlyList<double> Latencies
    {
        get
        {
            lock (turn)
            {
                return [.. latencies.Order()];
            }
        }
    }

    /// <summary>Starts it on a free port.</summary>
    public static async Task<ChatServer> Start()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var app = builder.Build();
        var server = new ChatServer(app);
        app.Run(server.Handle);
        await app.StartAsync();
        return server;
    }

    /// <summary>Nothing was replied yet.</summary>
    public void Clear()
    {
        lock (turn)
        {
            latencies.Clear();
            asked.Clear();
            polled = New();
        }
    }

    /// <summary>What was said and not fetched is gone.</summary>
    public void Forget()
    {
        lock (turn)
        {
            waiting.Clear();
        }
    }

    /// <summary>Somebody writes in private, at this moment by the clock.</summary>
    public void Say(params IEnumerable<(long Who, string Words, DateTimeOffset At)> messages)
    {
        lock (turn)
        {
            foreach (var (who, words, at) in messages)
            {
                var id = ++updates;
                waiting.Enqueue((id, Raw(id, who, words, at)));
                if (!asked.TryGetValue(who, out var times))
                {
                    asked[who] = times = new Queue<long>();
                }

                times.Enqueue(Stopwatch.GetTimestamp());
            }

            more.TrySetResult();
        }
    }

    /// <summary>Until it is asked for updates.</summary>
    public Task Polled(TimeSpan atMost) => polled.Task.WaitAsync(atMost);

    /// <summary>Until so many replies came.</summary>
    /// <exception cref="TimeoutException">They did not.</exception>
    public async Task Until(int replies, TimeSpan atMost)
    {
        var began = Stopwatch.GetTimestamp();
        while (true)
        {
            Task next;
            lock (turn)
            {
                if (latencies.Count >= replies)
                {
                    return;
                }

                replied = New();
                next = replied.Task;
            }

            var left = atMost - Stopwatch.GetElapsedTime(began);
            if (left <= TimeSpan.Zero || await Task.WhenAny(next, Task.Delay(left)) != next)
            {
                throw new TimeoutException(FormattableString.Invariant($"{Replies} of {replies} replies came."));
            }
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await app.DisposeAsync();

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private static string Raw(long id, long who, string words, DateTimeOffset at) => string.Create(
        CultureInfo.InvariantCulture,
        $$"""
        {"update_id":{{id}},"message":{
          "chat":{"id":{{who}},"type":"private","first_name":"M"},
          "from":{"id":{{who}},"is_bot":false,"first_name":"M"},
          "message_id":{{id}},"date":{{at.ToUnixTimeSeconds()}},"text":"{{words}}"
        } }
        """);

    private async Task Handle(HttpContext context)
    {
        var path = context.Request.Path.Value!;
        var method = path[(path.LastIndexOf('/') + 1)..];
        using var body = !context.Request.HasFormContentType && context.Request.ContentLength is not 0
            ? await JsonDocument.ParseAsync(context.Request.Body, default, context.RequestAborted)
            : null;
        var answer = method switch
        {
            "getMe" => Me,
            "getUpdates" => await Next(body, context.RequestAborted),
            "sendMessage" => Took(body!.RootElement.GetProperty("chat_id").GetInt64()),
            "sendPhoto" or "sendDocument" => Took(long.Parse((await context.Request.ReadFormAsync())["chat_id"]!, CultureInfo.InvariantCulture)),
            _ => Yes,
        };
        context.Response.ContentType = "application/json";
        context.Response.ContentLength = answer.Length;
        await context.Response.Body.WriteAsync(answer, context.RequestAborted);
    }

    private byte[] Took(long chat)
    {
        lock (turn)
        {
            if (asked.TryGetValue(chat, out var times) && times.TryDequeue(out var at))
            {
                LastReplyAt = Stopwatch.GetTimestamp();
                latencies.Add(Stopwatch.GetElapsedTime(at, LastReplyAt).TotalMilliseconds);
                replied.TrySetResult();
            }

            return Encoding.UTF8.GetBytes(string.Create(
                CultureInfo.InvariantCulture,
                $$"""{"ok":true,"result":{"chat":{"id":{{chat}},"type":"private"},"message_id":{{++sent}},"date":1764000000,"text":"as sent"} }"""));
        }
    }

    private async Task<byte[]> Next(JsonDocument? body, CancellationToken gone)
    {
        var offset = body is not null && body.RootElement.TryGetProperty("offset", out var said) ? said.GetInt64() : 0;
        var patience = Task.Delay(TimeSpan.FromSeconds(25), gone);
        while (true)
        {
            Task arrival;
            lock (turn)
            {
                while (waiting.TryPeek(out var first) && first.Update < offset)
                {
                    waiting.Dequeue();
                }

                polled.TrySetResult();
                if (waiting.Count > 0 || patience.IsCompleted)
                {
                    return Encoding.UTF8.GetBytes(
                        $"{{\"ok\":true,\"result\":[{string.Join(',', waiting.Take(MostAtOnce).Select(one => one.Raw))}]}}");
                }

                more = New();
                arrival = more.Task;
            }

            await Task.WhenAny(arrival, patience);
            gone.ThrowIfCancellationRequested();
        }
    }
}
