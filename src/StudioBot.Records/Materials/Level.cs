namespace StudioBot.Records.Materials;

/// <summary>What is left of a material: the sum of its lines in the book.</summary>
/// <param name="MaterialId">Which material.</param>
/// <param name="Left">What is in use on the shelf; zero where nothing was bought or made.</param>
/// <param name="Stopped">What stands there in stopped lots, apart from it.</param>
public sealed record Level(long MaterialId, Amount Left, Amount Stopped);
