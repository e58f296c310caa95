namespace StudioBot.Host.Health;

/// <summary>How several studios in one service are, each told by its folder.</summary>
/// <param name="studios">The studios, at least one.</param>
internal sealed class AllVitals(IReadOnlyList<(string Folder, Wellbeing Vitals)> studios) : Wellbeing
{
    /// <summary>Why one of them hangs: only a new start frees it.</summary>
    public override string? Hang => First(one => one.Hang);

    /// <summary>Why the chat service counts as silent: it is so to all of them, else it is one studio's own trouble,
    /// and no reason to start the others anew.</summary>
    public override string? Silence =>
        studios.All(one => one.Vitals.Silence is not null) ? First(one => one.Silence) : null;

    /// <summary>Why one of them is not ready, and how many are not.</summary>
    public override string? Unready
    {
        get
        {
            var count = studios.Count(one => one.Vitals.Unready is not null);
            return count > 1 ? $"{First(one => one.Unready)} ({count} of {studios.Count} studios are not ready)"
                : First(one => one.Unready);
        }
    }

    /// <summary>Looks at each of them.</summary>
    public override void Look()
    {
        foreach (var (_, vitals) in studios)
        {
            vitals.Look();
        }
    }

    private string? First(Func<Wellbeing, string?> why) => studios
        .Select(one => why(one.Vitals) is { } trouble ? $"{one.Folder}: {trouble}" : null)
        .FirstOrDefault(trouble => trouble is not null);
}
