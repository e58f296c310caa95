namespace StudioBot.Host.Verbs;

/// <summary>What stands behind the verb.</summary>
internal sealed record Invocation
{
    /// <summary>Everything that is no option.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>What stands after each <c>--data</c>.</summary>
    public IReadOnlyList<string> DataFolders { get; init; } = [];

    /// <summary>What stands after the only <c>--data</c>.</summary>
    public string? Data => DataFolders.SingleOrDefault();

    /// <summary>What stands after <c>--now</c>.</summary>
    public string? Now { get; init; }

    /// <summary>What stands after <c>--files</c>: a folder.</summary>
    public string? Files { get; init; }

    /// <summary>Whether <c>--json</c> stands there.</summary>
    public bool Json { get; init; }

    /// <summary>The invented studio is meant, not the one in the data folder.</summary>
    public bool Sample { get; init; }
}
