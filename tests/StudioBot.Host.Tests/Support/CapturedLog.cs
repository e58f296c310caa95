using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace StudioBot.Host.Tests.Support;

/// <summary>Everything that is logged, as it is, with nothing masked.</summary>
internal sealed class CapturedLog : ILoggerProvider
{
    private readonly ConcurrentQueue<string> entries = new();

    public string Text => string.Join('\n', entries);

    public ILogger CreateLogger(string categoryName) => new Category(entries);

    public void Dispose()
    {
    }

    private sealed class Category(ConcurrentQueue<string> entries) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull
        {
            entries.Enqueue($"{state}");
            return null;
        }

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(
            LogLevel logLevel,
            EventId eventId,
            TState state,
            Exception? exception,
            Func<TState, Exception?, string> formatter) =>
            entries.Enqueue($"{formatter(state, exception)} {exception}");
    }
}
