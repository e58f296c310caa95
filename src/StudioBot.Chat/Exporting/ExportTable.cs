namespace StudioBot.Chat.Exporting;

/// <summary>One of the tables that can be exported.</summary>
internal abstract class ExportTable
{
    /// <summary>Its name, as asked for: usage.</summary>
    public abstract string Name { get; }

    /// <summary>What one row is, and of many: line, lines.</summary>
    public abstract (string One, string Many) Rows { get; }

    /// <summary>The names of its columns, which stay as they are.</summary>
    public abstract IReadOnlyList<string> Columns { get; }

    /// <summary>Its rows, as many cells each as it has columns, one at a time.</summary>
    public abstract IEnumerable<IReadOnlyList<Cell>> Of(ExportScope scope);
}
