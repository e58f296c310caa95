using StudioBot.Craft.Practice;
using StudioBot.Records;

namespace StudioBot.Chat;

/// <summary>What an answer may look at: the records of one studio, and what the trade assumes.</summary>
/// <param name="View">The records; read only.</param>
/// <param name="Practice">Films, densities, resin times, safety lines and causes, with their grounds.</param>
/// <param name="IsSample">Whether the studio is the invented one, which answers that rest on records say.</param>
public sealed record Studio(StudioView View, TradePractice Practice, bool IsSample);
