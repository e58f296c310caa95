namespace StudioBot.Craft.Units;

/// <summary>A unit as people type it, with what one of it is and where that figure comes from.</summary>
/// <param name="Name">As replies write it.</param>
/// <param name="Spellings">Every way it is read, plurals included, in lower case.</param>
/// <param name="System">Whose measure it is.</param>
/// <param name="Source">Where the size comes from.</param>
public abstract record UnitName(string Name, IReadOnlyList<string> Spellings, UnitOrigin System, string Source)
{
    /// <summary>How far off one of it may be, as a fraction: 0 for a defined unit, 0.25 for a drop of paint.</summary>
    public double Spread { get; init; }

    /// <summary>A unit of length.</summary>
    /// <param name="Name">As replies write it.</param>
    /// <param name="Spellings">Every way it is read.</param>
    /// <param name="One">The length of one.</param>
    /// <param name="System">Whose measure it is.</param>
    /// <param name="Source">Where the size comes from.</param>
    public sealed record OfLength(
        string Name, IReadOnlyList<string> Spellings, Length One, UnitOrigin System, string Source)
        : UnitName(Name, Spellings, System, Source);

    /// <summary>A unit of volume.</summary>
    /// <param name="Name">As replies write it.</param>
    /// <param name="Spellings">Every way it is read.</param>
    /// <param name="One">The volume of one.</param>
    /// <param name="System">Whose measure it is.</param>
    /// <param name="Source">Where the size comes from.</param>
    public sealed record OfVolume(
        string Name, IReadOnlyList<string> Spellings, Volume One, UnitOrigin System, string Source)
        : UnitName(Name, Spellings, System, Source);

    /// <summary>A unit of mass.</summary>
    /// <param name="Name">As replies write it.</param>
    /// <param name="Spellings">Every way it is read.</param>
    /// <param name="One">The mass of one.</param>
    /// <param name="System">Whose measure it is.</param>
    /// <param name="Source">Where the size comes from.</param>
    public sealed record OfMass(
        string Name, IReadOnlyList<string> Spellings, Mass One, UnitOrigin System, string Source)
        : UnitName(Name, Spellings, System, Source);
}
