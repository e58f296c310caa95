namespace StudioBot.Chat.Exporting;

/// <summary>Writes a table as RFC 4180 has it: commas, CRLF after every row, quotes where a cell needs them.</summary>
internal sealed class CsvWriter(TextWriter to)
{
    private const string EndOfRow = "\r\n";

    private static readonly char[] Quoted = [',', '"', '\r', '\n'];

    /// <summary>One row.</summary>
    public void Write(IReadOnlyList<Cell> cells)
    {
        for (var at = 0; at < cells.Count; at++)
        {
            to.Write(at > 0 ? "," : "");
            to.Write(Field(cells[at]));
        }

        to.Write(EndOfRow);
    }

    // Blanks are part of a cell (section 2, rule 4); some readers trim them unless they are quoted.
    private static string Field(Cell cell)
    {
        var text = cell.IsTyped ? cell.Text : FormulaShield.Put(cell.Text);
        return text.AsSpan().ContainsAny(Quoted) || text.AsSpan().Trim().Length != text.Length
            ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : text;
    }
}
