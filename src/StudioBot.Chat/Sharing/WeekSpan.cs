namespace StudioBot.Chat.Sharing;

/// <summary>The time that a summary is about.</summary>
/// <param name="From">From this moment.</param>
/// <param name="Until">Until before this one.</param>
internal sealed record WeekSpan(DateTimeOffset From, DateTimeOffset Until);
