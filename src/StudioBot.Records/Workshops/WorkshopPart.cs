using StudioBot.Records.Materials;

namespace StudioBot.Records.Workshops;

/// <summary>What a workshop will take of one material.</summary>
/// <param name="Material">Which.</param>
/// <param name="Amount">How much; above zero, measured as the material's form is.</param>
public sealed record WorkshopPart(Material Material, Amount Amount);
