using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Forty minutes after a coat: wipe the drips from below.</summary>
internal sealed class DripsPing : CoatPing
{
    // Common practice: they hang by then, and are soft yet.
    private static readonly TimeSpan After = TimeSpan.FromMinutes(40);

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.Drips, "drips", "Forty minutes after a coat, for the drips.");

    /// <inheritdoc/>
    protected override DateTimeOffset? MomentOf(LaidCoat coat, PingTurn turn) => coat.At + After;

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        $"Drips: wipe the underside of {Pieces.Named(line, turn)} with a gloved finger.";
}
