using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>How a row of the inbox was settled.</summary>
/// <param name="Row">Which one.</param>
/// <param name="Press">What the service wants to hear of a press; none where it was none.</param>
/// <param name="Broke">It broke, and is tried again or parked.</param>
internal sealed record SettledRow(InboxRow Row, PressNotice? Press, bool Broke);
