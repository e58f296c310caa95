namespace StudioBot.Craft.Practice;

/// <summary>What a material is for: by it a reply chooses units, cautions and shares.</summary>
public enum MaterialKind
{
    /// <summary>A liquid colour, or the paint of a base coat.</summary>
    Paint,

    /// <summary>A dry pigment, reckoned by mass: a dust mask belongs to it.</summary>
    Powder,

    /// <summary>What carries the colour: a base, or a mixture of it.</summary>
    Medium,

    /// <summary>What makes a medium run: varnish, water.</summary>
    Thinner,

    /// <summary>Little of it, for an effect: flow extender, a mixed activator.</summary>
    Additive,

    /// <summary>What burns: never open near a torch.</summary>
    Solvent,

    /// <summary>The resin of a two-part system.</summary>
    PartA,

    /// <summary>The hardener of a two-part system.</summary>
    PartB,

    /// <summary>What is counted in pieces: cups, tiles, gloves.</summary>
    Supply,
}
