namespace StudioBot.Craft.Mixing;

/// <summary>A saved mixture in named parts; liquids by volume, powders by mass, or all by one of them.</summary>
public sealed record Recipe
{
    /// <summary>A recipe of these parts.</summary>
    /// <exception cref="ArgumentException">No name, no part, a part of nothing, or a material twice.</exception>
    public Recipe(string name, IReadOnlyList<Part> parts)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        if (parts.Count == 0 || parts.Any(part => !double.IsFinite(part.Amount) || part.Amount <= 0))
        {
            throw new ArgumentException("A recipe has a part at least, each above zero.", nameof(parts));
        }

        if (parts.DistinctBy(part => part.Material, StringComparer.OrdinalIgnoreCase).Count() < parts.Count)
        {
            throw new ArgumentException("A material stands once in a recipe.", nameof(parts));
        }

        Name = name;
        Parts = parts;
    }

    /// <summary>As the studio calls it.</summary>
    public string Name { get; }

    /// <summary>In the order they go into the cup.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>What all parts are counted in; null where liquids stand beside weighed powders.</summary>
    public RatioBy? By => Parts.All(part => part.By == Parts[0].By) ? Parts[0].By : null;

    /// <summary>Its parts as a ratio; null for a single part, or where liquids stand beside weighed powders.</summary>
    public MixRatio? Ratio => By is { } by && Parts.Count > 1
        ? new MixRatio([.. Parts.Select(part => part.Amount)], by)
        : null;

    /// <inheritdoc/>
    public bool Equals(Recipe? other) => other is not null && Name == other.Name && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Parts.Count);
}
