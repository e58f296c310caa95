using System.Globalization;

namespace StudioBot.Craft.Mixing;

/// <summary>Parts to parts, by volume or by mass; a basis belongs to every ratio.</summary>
public sealed record MixRatio
{
    /// <summary>A ratio of these parts.</summary>
    /// <exception cref="ArgumentException">Fewer than two parts, or one that is not a finite number above
    /// zero.</exception>
    public MixRatio(IReadOnlyList<double> parts, RatioBy by = RatioBy.Volume)
    {
        if (parts.Count < 2 || parts.Any(part => !double.IsFinite(part) || part <= 0))
        {
            throw new ArgumentException("A ratio has at least two parts, each above zero.", nameof(parts));
        }

        Parts = parts;
        By = by;
    }

    /// <summary>The parts in the order spoken; two or more, each above zero.</summary>
    public IReadOnlyList<double> Parts { get; }

    /// <summary>What the parts are counted in.</summary>
    public RatioBy By { get; }

    /// <summary>All parts together.</summary>
    public double Whole => Parts.Sum();

    /// <summary>The share of one part in the whole, 0 to 1.</summary>
    public double Share(int part) => Parts[part] / Whole;

    /// <inheritdoc/>
    public bool Equals(MixRatio? other) => other is not null && By == other.By && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(By, Parts.Count, Parts[0]);

    /// <summary>As people write it: 3:1, 100:45.</summary>
    public override string ToString() =>
        string.Join(':', Parts.Select(part => part.ToString("0.###", CultureInfo.InvariantCulture)));
}
