using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>All there is to say about one thing that the bot says by itself.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Word">As a person switches it off and on: <c>me mute torch</c>.</param>
/// <param name="When">When it comes, in one line.</param>
public sealed record PingSheet(PingKind Kind, string Word, string When);
