using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Somebody asked to be reminded.</summary>
internal sealed class AskedForPing : Ping
{
    private const string Kept = "request ";

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(PingKind.AskedFor, "asked", "What you asked to be reminded of.");

    /// <summary>Under which name the words of a request are kept among the studio's settings.</summary>
    public static string NameOf(long act) => string.Create(CultureInfo.InvariantCulture, $"{Kept}{act}");

    /// <summary>Whether a setting of this name is a request, and nothing the studio has set.</summary>
    public static bool IsRequest(string name) => name.StartsWith(Kept, StringComparison.Ordinal);

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn) =>
        turn.Studio.View.Studio.Setting(NameOf(planned.Subject.Id)) is null
            ? new SubjectState.Over(WhyUnwanted.Undone)
            : new SubjectState.Standing(planned.At);

    /// <inheritdoc/>
    internal override string SessionOf(PlannedPing planned, PingTurn turn) =>
        planned.Subject.Id.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn)
    {
        var (planned, view) = (line.Pings[0].Planned, turn.Studio.View);
        var author = view.Acts.Find(planned.Subject.Id)?.Author;
        var who = author is null || view.Members.Accounts(author.Id).Contains(planned.Chat)
            ? "You asked for it"
            : author.Name + " asked for it";
        return $"{who}: {view.Studio.Setting(NameOf(planned.Subject.Id))}.";
    }
}
