namespace StudioBot.Records.Backups;

/// <summary>A copy did not stand its proof, so it was thrown away and does not count.</summary>
/// <param name="findings">What is wrong, at least one line.</param>
/// <param name="isStudioDamaged">The studio's own file has the fault, not only its copy.</param>
public sealed class UnprovenBackupException(IReadOnlyList<string> findings, bool isStudioDamaged)
    : Exception(findings[0])
{
    /// <summary>The studio's own file has the fault, not only its copy.</summary>
    public bool IsStudioDamaged { get; } = isStudioDamaged;
}
