using StudioBot.Craft.Units;

namespace StudioBot.Records.Materials;

/// <summary>So much of a material, as its form is measured.</summary>
public abstract record Amount
{
    private Amount()
    {
    }

    /// <summary>Of a liquid, a mixture or a part of a resin.</summary>
    public sealed record ByVolume(Volume Volume) : Amount;

    /// <summary>Of a powder.</summary>
    public sealed record ByMass(Mass Mass) : Amount;

    /// <summary>Of what is counted; 0 or more.</summary>
    public sealed record ByCount(int Count) : Amount;
}
