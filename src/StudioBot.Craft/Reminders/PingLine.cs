namespace StudioBot.Craft.Reminders;

/// <summary>Pings of one kind, session and place: one line of a message, however many pieces.</summary>
/// <param name="Kind">What is said.</param>
/// <param name="Session">The pour or coat they come from.</param>
/// <param name="Place">Where they lie.</param>
/// <param name="Pings">At least one, in the order planned.</param>
public sealed record PingLine(PingKind Kind, string Session, string Place, IReadOnlyList<OutgoingPing> Pings);
