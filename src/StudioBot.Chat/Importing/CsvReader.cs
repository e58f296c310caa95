using System.Text;

namespace StudioBot.Chat.Importing;

/// <summary>Reads a table as RFC 4180 has it; a row may also end in a line feed or a return alone.</summary>
/// <param name="text">The whole file.</param>
/// <param name="between">What stands between two cells.</param>
/// <param name="troubles">Where what can't be read goes.</param>
internal sealed class CsvReader(string text, char between, ICollection<ImportTrouble> troubles)
{
    private const char Quote = '"';
    private const string InQuotes = "Put the whole cell in \" and each \" in it twice.";

    private int at;
    private int line = 1;

    /// <summary>The rows; those in which nothing is written are passed over, as are those that can't be read.</summary>
    public IEnumerable<CsvRow> Rows()
    {
        while (at < text.Length)
        {
            var begun = line;
            List<string> cells = [];
            var isRead = true;
            do
            {
                var cell = Cell(begun);
                isRead &= cell is not null;
                cells.Add(cell ?? "");
            }
            while (isRead && Passed(between));

            if (!isRead)
            {
                PassLine();
            }

            EndRow();
            if (isRead && cells.Exists(cell => cell.Trim().Length > 0))
            {
                yield return new CsvRow(begun, cells);
            }
        }
    }

    private string? Cell(int begun) => Passed(Quote) ? QuotedCell(begun) : BareCell();

    // Section 2, rule 5: what is not in quotes has none.
    private string? BareCell()
    {
        var from = at;
        while (at < text.Length && text[at] != between && !IsEnd(text[at]))
        {
            at++;
        }

        var cell = text[from..at];
        if (!cell.Contains(Quote, StringComparison.Ordinal))
        {
            return cell;
        }

        troubles.Add(new ImportTrouble(line, null, $"a \" stands within {ImportTrouble.Quoted(cell)}", InQuotes));
        return null;
    }

    // Rules 6 and 7: line ends and commas belong to it, two quotes are one.
    private string? QuotedCell(int begun)
    {
        var opened = line;
        var cell = new StringBuilder();
        while (at < text.Length)
        {
            if (!Passed(Quote))
            {
                CountLine();
                cell.Append(text[at++]);
            }
            else if (Passed(Quote))
            {
                cell.Append(Quote);
            }
            else if (at == text.Length || text[at] == between || IsEnd(text[at]))
            {
                return cell.ToString();
            }
            else
            {
                troubles.Add(new ImportTrouble(
                    line, null, $"something stands behind the closing \" of {ImportTrouble.Quoted(cell.ToString())}",
                    InQuotes));
                return null;
            }
        }

        troubles.Add(new ImportTrouble(
            begun, null, opened == begun ? "a \" is never closed" : $"the \" of line {opened} is never closed",
            InQuotes));
        return null;
    }

    private bool Passed(char sign)
    {
        var isThere = at < text.Length && text[at] == sign;
        at += isThere ? 1 : 0;
        return isThere;
    }

    private void PassLine()
    {
        while (at < text.Length && !IsEnd(text[at]))
        {
            at++;
        }
    }

    private void EndRow()
    {
        if (at == text.Length)
        {
            return;
        }

        CountLine();
        var isReturn = text[at++] == '\r';
        if (isReturn && Passed('\n'))
        {
            line++;
        }
    }

    // A return and a line feed are one line end, counted with the feed.
    private void CountLine()
    {
        if (text[at] == '\n' || (text[at] == '\r' && (at + 1 == text.Length || text[at + 1] != '\n')))
        {
            line++;
        }
    }

    private static bool IsEnd(char letter) => letter is '\r' or '\n';
}
