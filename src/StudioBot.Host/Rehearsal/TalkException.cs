namespace StudioBot.Host.Rehearsal;

/// <summary>A line of a talk that can't be played, with what would work.</summary>
internal sealed class TalkException(int line, string why) : Exception($"line {line}: {why}");
