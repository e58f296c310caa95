using System.Collections.Concurrent;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Tests.Support;

/// <summary>A wire that remembers what it was given and answers as it was told; by itself, everything
/// arrives.</summary>
internal sealed class RecordingWire(TimeProvider time) : IWire
{
    private readonly ConcurrentQueue<Delivered> deliveries = new();
    private readonly ConcurrentDictionary<long, ConcurrentQueue<Delivery>> scripts = new();
    private readonly ConcurrentQueue<(long Chat, long Message, bool IsPinned)> pins = new();
    private int lastMessage;

    public IReadOnlyList<Delivered> All => [.. deliveries];

    public IReadOnlyList<string?> Presses => [.. presses];

    /// <summary>What was pinned and unpinned, in order.</summary>
    public IReadOnlyList<(long Chat, long Message, bool IsPinned)> Pins => [.. pins];

    /// <summary>Whether we have the right to pin.</summary>
    public bool MayPin { get; set; } = true;

    /// <summary>What the sends to one chat wait for, to be caught on the wire.</summary>
    public ConcurrentDictionary<long, TaskCompletionSource> Held { get; } = new();

    private readonly ConcurrentQueue<string?> presses = new();

    public void Script(long chat, params Delivery[] answers) =>
        scripts[chat] = new ConcurrentQueue<Delivery>(answers);

    public Task<Delivery> Send(long chat, Letter letter, CancellationToken cancellation) =>
        Take(chat, null, letter, cancellation);

    public Task<Delivery> Edit(long chat, long message, Letter letter, CancellationToken cancellation) =>
        Take(chat, message, letter, cancellation);

    public Task<Delivery> Pin(long chat, long message, bool isPinned, CancellationToken cancellation)
    {
        pins.Enqueue((chat, message, isPinned));
        return Task.FromResult(MayPin ? new Delivery.Sent(message) : (Delivery)new Delivery.Refused("not enough rights to pin a message"));
    }

    public Task<bool> AnswerPress(string press, string? notice, CancellationToken cancellation)
    {
        presses.Enqueue(notice);
        return Task.FromResult(true);
    }

    private async Task<Delivery> Take(long chat, long? edited, Letter letter, CancellationToken cancellation)
    {
        deliveries.Enqueue(new Delivered(chat, edited, letter, time.GetUtcNow()));
        if (Held.TryGetValue(chat, out var held))
        {
            await held.Task.WaitAsync(cancellation);
        }

        return scripts.TryGetValue(chat, out var script) && script.TryDequeue(out var answer)
            ? answer
            : new Delivery.Sent(edited ?? Interlocked.Increment(ref lastMessage));
    }
}
