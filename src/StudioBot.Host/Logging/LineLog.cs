using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Microsoft.Extensions.Logging;

namespace StudioBot.Host.Logging;

/// <summary>The only log there is: one line an entry, as words or as JSON, every line through <see cref="Redaction"/>.
/// What somebody wrote can begin no line of it and gives no orders to a terminal.</summary>
/// <param name="to">Where it goes.</param>
/// <param name="time">The clock.</param>
/// <param name="isJson">Whether each line is an object of JSON; else it is words.</param>
/// <param name="studio">Of which of several studios it is; none where there is one.</param>
internal sealed class LineLog(TextWriter to, TimeProvider time, bool isJson = false, string? studio = null)
    : ILoggerProvider
{
    /// <summary>Between the lines that an entry would have, such as those of an exception.</summary>
    public const string LineEnd = " | ";

    /// <summary>Before the studio of an entry.</summary>
    public const string Of = " of ";

    private static readonly JsonWriterOptions Plainly = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Lock turn = new();

    /// <inheritdoc/>
    public ILogger CreateLogger(string categoryName) => new Category(this, categoryName);

    /// <inheritdoc/>
    public void Dispose() => to.Flush();

    private void Write(LogLevel level, string category, EventId number, string message, Exception? exception)
    {
        var at = time.GetUtcNow().ToString("yyyy-MM-ddTHH:mm:ss.fffZ", CultureInfo.InvariantCulture);

        // Numbers of the framework's own are none of ours.
        var ours = category.StartsWith(nameof(StudioBot), StringComparison.Ordinal) ? number.Id : 0;
        var line = isJson
            ? Json(at, level, category, ours == 0 ? default : number, message, exception)
            : $"{at} {level} {category}{(ours == 0 ? "" : $" {ours}")}{(studio is null ? "" : Of + studio)}: "
                + OneLine(Whole(message, exception));
        lock (turn)
        {
            to.WriteLine(Redaction.Of(line));
            to.Flush();
        }
    }

    private string Json(
        string at, LogLevel level, string category, EventId number, string message, Exception? exception)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Plainly))
        {
            json.WriteStartObject();
            json.WriteString("at", at);
            json.WriteString("level", level.ToString());
            json.WriteString("from", category);
            if (studio is not null)
            {
                json.WriteString("studio", studio);
            }

            if (number.Id != 0)
            {
                json.WriteNumber("event", number.Id);
                json.WriteString("name", number.Name);
            }

            json.WriteString("text", OneLine(message));
            if (exception is not null)
            {
                json.WriteString("exception", OneLine(exception.ToString()));
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static string Whole(string message, Exception? exception) =>
        exception is null ? message : $"{message}\n{exception}";

    private static string OneLine(string text) => string.Join(
        LineEnd,
        text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')
            .Select(line => string.Concat(line.Trim().Select(Harmless))));

    private static char Harmless(char letter) =>
        char.IsControl(letter) || letter is '\u2028' or '\u2029' ? ' ' : letter;

    private sealed class Category(LineLog log, string name) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => logLevel != LogLevel.None;

        public void Log<TState>(
            LogLevel logLevel,
            EventId eventId,
            TState state,
            Exception? exception,
            Func<TState, Exception?, string> formatter) =>
            log.Write(logLevel, name, eventId, formatter(state, exception), exception);
    }
}
