namespace StudioBot.Chat.Pictures;

/// <summary>A bar over the days of a piece.</summary>
/// <param name="Spell">What it does in these days.</param>
/// <param name="From">From when, on the studio's wall clock.</param>
/// <param name="To">To when; not before that.</param>
internal sealed record PieceBar(PieceSpell Spell, DateTime From, DateTime To);
