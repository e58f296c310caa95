using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>What is in a cup already: a part by its name, and how much of it.</summary>
/// <param name="Name">A material, or A, B, C for the parts of the ratio in order.</param>
/// <param name="Amount">By volume or by mass.</param>
internal sealed record CupPart(string Name, Amount Amount);
