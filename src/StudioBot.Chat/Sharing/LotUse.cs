namespace StudioBot.Chat.Sharing;

/// <summary>Where some of a lot went.</summary>
/// <param name="IsSure">The lot was named then; else it was taken as the oldest that was open.</param>
/// <param name="What">coat of 17, Tomas.</param>
/// <param name="Amount">How much, or on which day where nobody measured it.</param>
/// <param name="Owners">Whose it is now; empty where it is nobody's.</param>
internal sealed record LotUse(bool IsSure, string What, string Amount, IReadOnlyList<string> Owners);
