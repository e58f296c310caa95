using System.IO.Compression;
using System.Text;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Exporting;

/// <summary>Tables as files, row by row.</summary>
internal sealed class Export
{
    /// <summary>The most that goes out as one file: what a phone still takes.</summary>
    public const int MostBytes = 20_000_000;

    // With the mark of byte order: without it the usual spreadsheets take the bytes for another alphabet, and what
    // reads UTF-8 passes it over.
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: true);

    private readonly List<(ExportTable Table, int Rows)> tables = [];

    private Export(ReplyFile? file) => File = file;

    /// <summary>The file; none where it is larger than goes out.</summary>
    public ReplyFile? File { get; private set; }

    /// <summary>How many rows of each.</summary>
    public IReadOnlyList<(ExportTable Table, int Rows)> Tables => tables;

    /// <summary>One table as a file of its own.</summary>
    public static Export One(ExportTable table, ExportScope scope)
    {
        using var stream = new MemoryStream();
        var export = new Export(null);
        export.Write(table, scope, stream);
        return export.Closed($"{table.Name}{Suffix(scope)}.csv", "text/csv", stream);
    }

    /// <summary>Several, each a file within one.</summary>
    /// <param name="all">The tables.</param>
    /// <param name="scope">What of them.</param>
    /// <param name="at">The moment that the files within say.</param>
    public static Export Several(IEnumerable<ExportTable> all, ExportScope scope, DateTime at)
    {
        using var stream = new MemoryStream();
        var export = new Export(null);
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8))
        {
            foreach (var table in all)
            {
                var entry = zip.CreateEntry($"{table.Name}{Suffix(scope)}.csv");
                entry.LastWriteTime = new DateTimeOffset(DateTime.SpecifyKind(at, DateTimeKind.Utc));
                using var part = entry.Open();
                export.Write(table, scope, part);
            }
        }

        return export.Closed($"studio{Suffix(scope)}.zip", "application/zip", stream);
    }

    private static string Suffix(ExportScope scope) => scope.Month is { } month ? $"-{month}" : "";

    private void Write(ExportTable table, ExportScope scope, Stream to)
    {
        using var text = new StreamWriter(to, Utf8, leaveOpen: true);
        var csv = new CsvWriter(text);
        csv.Write([.. table.Columns.Select(Cell.Of)]);
        var rows = 0;
        foreach (var row in table.Of(scope))
        {
            csv.Write(row);
            rows++;
        }

        tables.Add((table, rows));
    }

    private Export Closed(string name, string mediaType, MemoryStream stream)
    {
        File = stream.Length <= MostBytes ? new ReplyFile(name, mediaType, stream.ToArray()) : null;
        return this;
    }
}
