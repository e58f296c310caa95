using StudioBot.Host.Health;

namespace StudioBot.Host.Sending;

/// <summary>A way out that counts what came of each try, and how long it took.</summary>
internal sealed class CountedWire(IWire wire, Counts counts, TimeProvider time) : IWire
{
    /// <inheritdoc/>
    public Task<Delivery> Send(long chat, Letter letter, CancellationToken cancellation) =>
        Counted(() => wire.Send(chat, letter, cancellation));

    /// <inheritdoc/>
    public Task<Delivery> Edit(long chat, long message, Letter letter, CancellationToken cancellation) =>
        Counted(() => wire.Edit(chat, message, letter, cancellation));

    /// <inheritdoc/>
    public Task<Delivery> Pin(long chat, long message, bool isPinned, CancellationToken cancellation) =>
        Counted(() => wire.Pin(chat, message, isPinned, cancellation));

    /// <inheritdoc/>
    public Task<bool> AnswerPress(string press, string? notice, CancellationToken cancellation) =>
        wire.AnswerPress(press, notice, cancellation);

    private async Task<Delivery> Counted(Func<Task<Delivery>> carry)
    {
        var start = time.GetTimestamp();
        var delivery = await carry();
        counts.Carried(time.GetElapsedTime(start), delivery.GetType().Name.ToLowerInvariant());
        return delivery;
    }
}
