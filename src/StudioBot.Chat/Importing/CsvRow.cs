namespace StudioBot.Chat.Importing;

/// <summary>One row of a file.</summary>
/// <param name="Line">The line on which it begins, counted from 1.</param>
/// <param name="Cells">Its cells, as many as it has.</param>
internal sealed record CsvRow(int Line, IReadOnlyList<string> Cells);
