using System.Globalization;
using Microsoft.Extensions.Logging;

namespace StudioBot.Host.Logging;

/// <summary>The only log there is: one line an entry, what more it has set in below it, every line through
/// <see cref="Redaction"/>. What somebody wrote can begin no line of it and gives no orders to a terminal.</summary>
internal sealed class LineLog(TextWriter to, TimeProvider time) : ILoggerProvider
{
    private const string SetIn = "    ";

    private readonly Lock turn = new();

    /// <inheritdoc/>
    public ILogger CreateLogger(string categoryName) => new Category(this, categoryName);

    /// <inheritdoc/>
    public void Dispose() => to.Flush();

    private void Write(LogLevel level, string category, string message, Exception? exception)
    {
        var what = Lines(exception is null ? message : $"{message}\n{exception}");
        var line = string.Create(
            CultureInfo.InvariantCulture, $"{time.GetUtcNow():yyyy-MM-ddTHH:mm:ss.fffZ} {level} {category}: {what}");
        lock (turn)
        {
            to.WriteLine(Redaction.Of(line));
            to.Flush();
        }
    }

    private static string Lines(string text) => string.Join(
        Environment.NewLine + SetIn,
        text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => string.Concat(line.Select(Harmless))));

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
            log.Write(logLevel, name, formatter(state, exception), exception);
    }
}
