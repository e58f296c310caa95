namespace StudioBot.Chat.Reading.Values;

/// <summary>A flow cup and how long it took to drain.</summary>
/// <param name="Cup">Its short name: ford4, iso4, zahn2.</param>
/// <param name="Time">How long, where it stands beside the cup.</param>
internal sealed record CupReading(string Cup, TimeSpan? Time);
