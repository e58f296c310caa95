namespace StudioBot.Chat.Pictures;

/// <summary>What the picture of a week shows: no names of members and no prices.</summary>
/// <param name="Title">Which week: Week 48, 23 Nov to 29 Nov so far.</param>
/// <param name="Rows">The materials from top to bottom, 1 to <see cref="WeekPicture.MostRows"/>.</param>
/// <param name="More">How many more were used that are not shown.</param>
internal sealed record WeekFigures(string Title, IReadOnlyList<WeekRow> Rows, int More);
