namespace StudioBot.Host.Tests.Support;

/// <summary>How a process ended, and what it said.</summary>
internal sealed record Ended(int Code, string Out, string Error)
{
    public IReadOnlyList<string> Lines => Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
