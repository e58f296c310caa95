using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>So much of one material.</summary>
/// <param name="Material">As the studio calls it.</param>
/// <param name="Amount">How much in all.</param>
/// <param name="Packs">How many packs that was; 1 where it came in one.</param>
internal sealed record Item(string Material, Amount Amount, int Packs = 1);
