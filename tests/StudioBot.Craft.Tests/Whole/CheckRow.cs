using System.Text;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>One row of check-values.csv: a figure from outside the code.</summary>
public sealed record CheckRow(
    string Id, string Computation, string Given, string Expected, string Unit, string Tolerance, string Source)
{
    private const int Columns = 8;

    /// <summary>Every row of the file, in its order.</summary>
    public static IReadOnlyList<CheckRow> All { get; } =
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Whole", "check-values.csv")).Skip(1).Select(Read)];

    private static CheckRow Read(string line)
    {
        var fields = Fields(line);
        return fields.Count == Columns
            ? new CheckRow(fields[0], fields[1], fields[2], fields[3], fields[4], fields[5], fields[6])
            : throw new FormatException($"{fields.Count} columns instead of {Columns}: {line}");
    }

    private static List<string> Fields(string line)
    {
        List<string> fields = [];
        var field = new StringBuilder();
        var quoted = false;
        foreach (var letter in line)
        {
            switch (letter)
            {
                case '"':
                    quoted = !quoted;
                    break;
                case ',' when !quoted:
                    fields.Add(field.ToString());
                    field.Clear();
                    break;
                default:
                    field.Append(letter);
                    break;
            }
        }

        return [.. fields, field.ToString()];
    }
}
