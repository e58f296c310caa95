using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Somebody asked to be reminded.</summary>
internal sealed class AskedForPing : Ping
{
    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(PingKind.AskedFor, "asked", "What you asked to be reminded of.");

    /// <summary>Under which name the words of a request are kept among the studio's settings.</summary>
    public static string NameOf(long act) => string.Create(CultureInfo.InvariantCulture, $"request {act}");

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn) =>
        turn.Studio.View.Studio.Setting(NameOf(planned.Subject.Id)) is null
            ? new SubjectState.Over(WhyUnwanted.Undone)
            : new SubjectState.Standing(planned.At);

    /// <inheritdoc/>
    internal override string SessionOf(PlannedPing planned, PingTurn turn) =>
        planned.Subject.Id.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn) =>
        "You asked for it: " + turn.Studio.View.Studio.Setting(NameOf(line.Pings[0].Planned.Subject.Id)) + ".";
}
