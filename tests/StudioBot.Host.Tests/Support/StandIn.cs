using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace StudioBot.Host.Tests.Support;

/// <summary>Stands in for the chat service: on loopback, scripted, strict, and it remembers every call.</summary>
internal sealed class StandIn : IAsyncDisposable
{
    public const string Token = "123456789:TestOnlyTestOnlyTestOnlyTestOnly123";
    public const string BotName = "studio_bot";

    private static readonly JsonElement Empty = JsonDocument.Parse("{}").RootElement;

    private readonly WebApplication app;
    private readonly string token;
    private readonly ConcurrentQueue<Call> calls = new();
    private readonly List<(Func<Call, bool> Fits, Queue<Answer> Answers)> scripts = [];
    private readonly StandInUpdates updates = new();
    private readonly SemaphoreSlim heard = new(0);
    private int lastMessage;
    private bool isGone;

    private StandIn(WebApplication app, string token)
    {
        (this.app, this.token) = (app, token);
        app.Map("/bot{token}/{method}", Handle);
    }

    public Uri Url => new(app.Urls.Single());

    public IReadOnlyList<Call> Calls => [.. calls];

    public StandInUpdates Updates => updates;

    /// <summary>Called with each call that came, before it is answered.</summary>
    public Action<Call> Came { get; set; } = _ => { };

    /// <summary>Called with each call whose answer went out whole.</summary>
    public Action<Call> Answered { get; set; } = _ => { };

    public IReadOnlyList<Call> Sent => [.. calls.Where(call => call.Method is "sendMessage" or "sendDocument" or "sendPhoto" or "editMessageText")];

    public static async Task<StandIn> Start(string token = Token)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var standIn = new StandIn(builder.Build(), token);
        await standIn.app.StartAsync();
        return standIn;
    }

    /// <summary>The next calls of this method get these answers, one each; then it answers by itself again.</summary>
    public void Script(string method, params Answer[] answers) => Script(call => call.Method == method, answers);

    public void Script(Func<Call, bool> fits, params Answer[] answers)
    {
        lock (scripts)
        {
            scripts.Add((fits, new Queue<Answer>(answers)));
        }
    }

    /// <summary>Nothing is scripted any more, and no update waits.</summary>
    public void Forget()
    {
        lock (scripts)
        {
            scripts.Clear();
        }

        updates.Clear();
    }

    /// <summary>Until that many calls fit; fails loudly after a minute.</summary>
    public async Task<IReadOnlyList<Call>> Until(int count, Func<Call, bool> fits)
    {
        using var enough = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        while (calls.Count(fits) < count)
        {
            try
            {
                await heard.WaitAsync(enough.Token);
            }
            catch (OperationCanceledException)
            {
                throw new TimeoutException($"Heard only: {string.Join("; ", calls.Select(call => $"{call.Method} {call.Text}"))}");
            }
        }

        return [.. calls.Where(fits)];
    }

    public async ValueTask DisposeAsync()
    {
        if (isGone)
        {
            return;
        }

        isGone = true;
        updates.End();
        await app.DisposeAsync();
        updates.Dispose();
        heard.Dispose();
    }

    private async Task Handle(HttpContext context)
    {
        var method = (string)context.Request.RouteValues["method"]!;
        var call = new Call(method, await Body(context.Request), TimeProvider.System.GetUtcNow());
        calls.Enqueue(call);
        heard.Release();
        Came(call);
        try
        {
            var answer = Scripted(call)
                ?? ((string)context.Request.RouteValues["token"]! == token ? null : Answer.Unauthorized)
                ?? StandInRules.Refusal(call)
                ?? await OwnAnswer(call, context.RequestAborted);
            await answer.Write(context);
            await context.Response.CompleteAsync();
        }
        finally
        {
            Answered(call);
        }
    }

    private static async Task<JsonElement> Body(HttpRequest request)
    {
        if (request.HasFormContentType)
        {
            return Form(await request.ReadFormAsync());
        }

        using var reader = new StreamReader(request.Body);
        var text = await reader.ReadToEndAsync();
        return text.Length > 0 ? JsonDocument.Parse(text).RootElement.Clone() : Empty;
    }

    // A form is read as if it had been JSON; a file is its name, its bytes and where it is referred to from.
    private static JsonElement Form(IFormCollection form)
    {
        var body = new JsonObject();
        foreach (var (name, value) in form)
        {
            var text = value.ToString();
            body[name] = text.StartsWith('{') ? JsonNode.Parse(text) : text;
        }

        foreach (var file in form.Files)
        {
            using var bytes = new MemoryStream();
            file.CopyTo(bytes);
            body[file.Name] = new JsonObject
            {
                ["file_name"] = file.FileName,
                ["content"] = Convert.ToBase64String(bytes.ToArray()),
            };
        }

        return JsonDocument.Parse(body.ToJsonString()).RootElement.Clone();
    }

    private Answer? Scripted(Call call)
    {
        lock (scripts)
        {
            var script = scripts.FirstOrDefault(script => script.Answers.Count > 0 && script.Fits(call));
            return script.Answers?.Dequeue();
        }
    }

    private async Task<Answer> OwnAnswer(Call call, CancellationToken cancellation) => call.Method switch
    {
        "getMe" => Answer.Yes(new { id = 123456789, is_bot = true, first_name = "Studio", username = BotName }),
        "getUpdates" => Answer.Yes(await updates.Next(call.Body, cancellation)),
        "sendMessage" or "sendDocument" or "sendPhoto" => Answer.Yes(Message(call.Chat, Interlocked.Increment(ref lastMessage))),
        "editMessageText" => Answer.Yes(Message(call.Chat, call.Body.GetProperty("message_id").GetInt32())),
        _ => Answer.Yes(true),
    };

    private static JsonObject Message(long chat, int number) => new()
    {
        ["message_id"] = number,
        ["date"] = 1_764_000_000,
        ["chat"] = new JsonObject { ["id"] = chat, ["type"] = chat < 0 ? "supergroup" : "private" },
        ["text"] = "as sent",
    };
}
