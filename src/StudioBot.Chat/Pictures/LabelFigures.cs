namespace StudioBot.Chat.Pictures;

/// <summary>What a label says: nothing of who made the piece, and nothing of the studio.</summary>
/// <param name="Number">As written under the piece; 1 or more.</param>
/// <param name="Poured">The day of the pour, in studio time.</param>
/// <param name="Technique">The name of the technique.</param>
/// <param name="Code">What a phone reads off its code: a link that opens the piece in the chat, or its line.</param>
internal sealed record LabelFigures(int Number, DateOnly Poured, string Technique, string Code);
