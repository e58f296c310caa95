using StudioBot.Chat.Replies;

namespace StudioBot.Host.Turns;

/// <summary>An answer, and whether what it answers only asked.</summary>
internal sealed record Answered(Reply Reply, bool ToQuestion);
