using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace StudioBot.Host.Tests.Support;

/// <summary>A scripted answer of the stand-in, in place of what it would say by itself.</summary>
internal sealed record Answer(Func<HttpContext, Task> Write)
{
    /// <summary>The connection is cut without a word.</summary>
    public static Answer Reset { get; } = new(context =>
    {
        context.Abort();
        return Task.CompletedTask;
    });

    /// <summary>No answer as long as the caller waits.</summary>
    public static Answer Never { get; } = new(async context =>
    {
        var gone = new TaskCompletionSource();
        await using var registered = context.RequestAborted.Register(gone.SetResult);
        await gone.Task;
    });

    /// <summary>An answer that comes byte by byte and has no end.</summary>
    public static Answer Drip { get; } = new(async context =>
    {
        context.Response.ContentType = "application/json";
        while (!context.RequestAborted.IsCancellationRequested)
        {
            await context.Response.Body.WriteAsync(" "u8.ToArray(), CancellationToken.None);
            await context.Response.Body.FlushAsync(CancellationToken.None);
            await Task.Delay(TimeSpan.FromMilliseconds(5), CancellationToken.None);
        }
    });

    /// <summary>An answer that is cut before the length it names.</summary>
    public static Answer WrongLength { get; } = new(async context =>
    {
        context.Response.ContentType = "application/json";
        context.Response.ContentLength = 500;
        await context.Response.Body.WriteAsync("{\"ok\":true,"u8.ToArray());
        await context.Response.Body.FlushAsync();
        context.Abort();
    });

    public static Answer Empty { get; } = Raw(200, "application/json", "");

    /// <summary>A page where JSON should be, as a hotel's network shows it.</summary>
    public static Answer Page { get; } = Raw(200, "text/html", "<html><h1>Welcome, accept our terms</h1></html>");

    /// <summary>The front end's page for a service that is down.</summary>
    public static Answer BadGateway { get; } = Raw(502, "text/html", "<html><h1>502 Bad Gateway</h1></html>");

    public static Answer BadJson { get; } = Raw(200, "application/json", """{"ok":true,"result":""");

    public static Answer Unauthorized { get; } = No(401, "Unauthorized");

    public static Answer Conflict { get; } =
        No(409, "Conflict: terminated by other getUpdates request; make sure that only one bot instance is running");

    public static Answer Blocked { get; } = No(403, "Forbidden: bot was blocked by the user");

    public static Answer TooMany(int seconds) => No(
        429, $"Too Many Requests: retry after {seconds}", new { retry_after = seconds });

    public static Answer MovedTo(long chat) => No(
        400, "Bad Request: group chat was upgraded to a supergroup chat", new { migrate_to_chat_id = chat });

    public static Answer No(int code, string description, object? parameters = null) => Raw(
        code,
        "application/json",
        JsonSerializer.Serialize(parameters is null
            ? new { ok = false, error_code = code, description }
            : (object)new { ok = false, error_code = code, description, parameters }));

    public static Answer Yes(object result) =>
        Raw(200, "application/json", JsonSerializer.Serialize(new { ok = true, result }));

    public static Answer Raw(int status, string type, string body) => new(async context =>
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = type;
        await context.Response.Body.WriteAsync(Encoding.UTF8.GetBytes(body));
    });
}
