using StudioBot.Host.Sending;

namespace StudioBot.Host.Tests.Support;

/// <summary>What a wire was given, and when.</summary>
internal sealed record Delivered(long Chat, long? Edited, Letter Letter, DateTimeOffset At);
