namespace StudioBot.Craft.Coats;

/// <summary>What a coat shows of how far it has set.</summary>
public enum CureSign
{
    /// <summary>It flows no more.</summary>
    Gelled,

    /// <summary>A gloved finger leaves a print and draws no string.</summary>
    Tacky,
}
