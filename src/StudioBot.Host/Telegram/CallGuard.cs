using Polly;
using Polly.CircuitBreaker;
using Polly.Retry;
using Polly.Timeout;
using StudioBot.Host.Sending;
using Telegram.Bot.Exceptions;

namespace StudioBot.Host.Telegram;

/// <summary>What stands around every call to the chat service: a timeout, and a circuit breaker that spares a service
/// that is down.</summary>
internal sealed class CallGuard
{
    private const int Repeats = 4;

    private static readonly PredicateBuilder<object> BrokenWay = new PredicateBuilder()
        .Handle<TimeoutRejectedException>()
        .Handle<RequestException>(IsBrokenWay);

    /// <summary>A guard of its own, with its own count of troubles.</summary>
    /// <param name="longest">How long one call may take.</param>
    /// <param name="time">What the waits run on.</param>
    public CallGuard(TimeSpan longest, TimeProvider time)
    {
        var backoff = new Backoff(Random.Shared);
        var once = new ResiliencePipelineBuilder { TimeProvider = time }
            .AddCircuitBreaker(new CircuitBreakerStrategyOptions
            {
                ShouldHandle = BrokenWay,
                FailureRatio = 0.8,
                MinimumThroughput = 6,
                SamplingDuration = TimeSpan.FromSeconds(30),
                BreakDuration = TimeSpan.FromSeconds(10),
            })
            .AddTimeout(longest)
            .Build();
        Once = once;
        Repeating = new ResiliencePipelineBuilder { TimeProvider = time }
            .AddRetry(new RetryStrategyOptions
            {
                ShouldHandle = BrokenWay,
                MaxRetryAttempts = Repeats,
                DelayGenerator = tried => new(backoff.After(tried.AttemptNumber + 1)),
            })
            .AddPipeline(once)
            .Build();
    }

    /// <summary>Around what must not be repeated here: a send, and a poll, whose loop has its own delay.</summary>
    public ResiliencePipeline Once { get; }

    /// <summary>Around what may be repeated: asking, and setting what is set already.</summary>
    public ResiliencePipeline Repeating { get; }

    // Who is asked to keep still is no broken way, whatever the answer looks like.
    private static bool IsBrokenWay(RequestException trouble) =>
        trouble is not ApiRequestException { ErrorCode: > 0 and < 500 } && Refusals.Rest(trouble) is null;
}
