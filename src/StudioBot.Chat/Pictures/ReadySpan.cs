namespace StudioBot.Chat.Pictures;

/// <summary>When a piece is ready, eight times in ten, on the studio's wall clock.</summary>
/// <param name="Earliest">One time in ten by then.</param>
/// <param name="Likely">One time in two.</param>
/// <param name="Latest">Nine times in ten.</param>
/// <param name="LikelyDay">The likely day in words: 5 Dec.</param>
internal sealed record ReadySpan(DateTime Earliest, DateTime Likely, DateTime Latest, string LikelyDay);
