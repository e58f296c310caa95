using System.Text;
using StudioBot.Chat.Exporting;

namespace StudioBot.Chat.Importing;

/// <summary>A file of lots as it lies there: bytes, their alphabet, the names of its columns, and its rows.</summary>
internal sealed class StockSheet
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly string[] Needed = [Columns.Material, Columns.Left, Columns.Unit];

    private readonly Dictionary<string, int> places;

    private StockSheet(char between, Dictionary<string, int> places, IReadOnlyList<CsvRow> rows) =>
        (Between, this.places, Rows) = (between, places, rows);

    /// <summary>What stands between two cells.</summary>
    public char Between { get; }

    /// <summary>The rows below the names.</summary>
    public IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>What stands in this column of a row; empty where the file has no such column.</summary>
    public string Cell(CsvRow row, string column) => places.TryGetValue(column, out var at) ? row.Cells[at] : "";

    /// <summary>The file's rows; none where its columns can't be told, and then there is a trouble.</summary>
    public static StockSheet? Read(byte[] content, ICollection<ImportTrouble> troubles)
    {
        if (Text(content, troubles) is not { } text)
        {
            return null;
        }

        var between = BetweenCells(text);
        List<CsvRow> rows = [.. new CsvReader(text, between, troubles).Rows()];
        if (rows is not [var names, .. var below])
        {
            AddUnless(troubles, new ImportTrouble(1, null, "there is nothing in this file", Begins));
            return null;
        }

        if (Places(names, troubles) is not { } places)
        {
            return null;
        }

        if (below.Count == 0)
        {
            AddUnless(troubles, new ImportTrouble(
                names.Line, null, "no lot stands below the names of the columns", "Write one a line."));
        }

        var most = places.Values.Max() + 1;
        foreach (var row in below)
        {
            CheckLength(row, names.Cells.Count, most, troubles);
        }

        return new StockSheet(between, places, [.. below.Where(row => row.Cells.Count >= most)]);
    }

    private static string Begins => $"Begin with {string.Join(',', StockTable.ColumnNames)}";

    private static void AddUnless(ICollection<ImportTrouble> troubles, ImportTrouble trouble)
    {
        if (troubles.Count == 0)
        {
            troubles.Add(trouble);
        }
    }

    private static string? Text(byte[] content, ICollection<ImportTrouble> troubles)
    {
        if (content.Length > Export.MostBytes)
        {
            troubles.Add(new ImportTrouble(
                1, null, "the file is larger than an export ever is", $"{Export.MostBytes / 1_000_000} MB at most."));
            return null;
        }

        try
        {
            return Utf8.GetString(content).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            troubles.Add(new ImportTrouble(
                FirstBroken(content), null, "this is not UTF-8", "Save it as “CSV UTF-8”."));
            return null;
        }
    }

    // No byte of a longer letter is a line feed, so that each line is whole.
    private static int FirstBroken(byte[] content)
    {
        var (line, from) = (1, 0);
        while (from < content.Length)
        {
            var end = Array.IndexOf(content, (byte)'\n', from);
            end = end < 0 ? content.Length : end + 1;
            try
            {
                Utf8.GetCharCount(content, from, end - from);
            }
            catch (DecoderFallbackException)
            {
                return line;
            }

            (line, from) = (line + 1, end);
        }

        return 1;
    }

    // Where the decimal sign is a comma, spreadsheets put semicolons between cells.
    private static char BetweenCells(string text)
    {
        var end = text.AsSpan().TrimStart("\r\n").IndexOfAny('\r', '\n');
        var names = end < 0 ? text.AsSpan().Trim() : text.AsSpan().TrimStart("\r\n")[..end];
        return names.Contains(';') && !names.Contains(',') ? ';' : ',';
    }

    private static Dictionary<string, int>? Places(CsvRow names, ICollection<ImportTrouble> troubles)
    {
        var before = troubles.Count;
        Dictionary<string, int> places = [];
        for (var at = 0; at < names.Cells.Count; at++)
        {
            var name = names.Cells[at].Trim().ToLowerInvariant();
            if (name.Length == 0)
            {
                continue;   // a spreadsheet saves empty columns beside the table
            }

            if (!StockTable.ColumnNames.Contains(name))
            {
                troubles.Add(new ImportTrouble(
                    names.Line, null, $"{ImportTrouble.Quoted(names.Cells[at])} is no column",
                    $"There are {string.Join(", ", StockTable.ColumnNames)}."));
            }
            else if (!places.TryAdd(name, at))
            {
                troubles.Add(new ImportTrouble(names.Line, name, "this column is there twice", "Leave one out."));
            }
        }

        foreach (var missing in Needed.Where(name => !places.ContainsKey(name)))
        {
            troubles.Add(new ImportTrouble(names.Line, missing, "this column is missing", Begins));
        }

        return troubles.Count == before ? places : null;
    }

    private static void CheckLength(CsvRow row, int names, int most, ICollection<ImportTrouble> troubles)
    {
        if (row.Cells.Count < most)
        {
            troubles.Add(new ImportTrouble(
                row.Line, null, $"{row.Cells.Count} cells stand here below {names} columns",
                "Leave a cell empty rather than out."));
        }
        else if (row.Cells.Skip(names).Any(cell => cell.Trim().Length > 0))
        {
            troubles.Add(new ImportTrouble(
                row.Line, null, $"{row.Cells.Count} cells stand here below {names} columns",
                "Put a cell that holds a comma in \"."));
        }
    }

    /// <summary>The names of the columns.</summary>
    internal static class Columns
    {
        public const string Material = "material";
        public const string Form = "form";
        public const string Lot = "lot";
        public const string BoughtAt = "bought_at";
        public const string Bought = "bought";
        public const string Left = "left";
        public const string Unit = "unit";
        public const string Price = "price";
        public const string Value = "value";
        public const string Currency = "currency";
        public const string OpenedAt = "opened_at";
        public const string StoppedAt = "stopped_at";
        public const string StoppedWhy = "stopped_why";
    }
}
