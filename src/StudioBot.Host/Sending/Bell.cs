using System.Threading.Channels;

namespace StudioBot.Host.Sending;

/// <summary>Wakes one loop that waits for work; ringing before it waits, or often, is ringing once.</summary>
internal sealed class Bell(TimeProvider time)
{
    private readonly Channel<bool> rung = Channel.CreateBounded<bool>(
        new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite, SingleReader = true });

    /// <summary>There is work.</summary>
    public void Ring() => rung.Writer.TryWrite(true);

    /// <summary>Until it is rung, or at most this long.</summary>
    public async Task Wait(TimeSpan atMost, CancellationToken cancellation)
    {
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var heard = rung.Reader.ReadAsync(enough.Token).AsTask();
        var tired = Task.Delay(atMost, time, enough.Token);
        var first = await Task.WhenAny(heard, tired);
        await enough.CancelAsync();

        // A ring that came while tiredness won is kept for the next wait.
        if (first != heard && heard.IsCompletedSuccessfully)
        {
            Ring();
        }

        cancellation.ThrowIfCancellationRequested();
    }
}
