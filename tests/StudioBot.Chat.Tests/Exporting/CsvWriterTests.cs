using System.Globalization;
using CsCheck;
using CsvHelper;
using CsvHelper.Configuration;
using StudioBot.Chat.Exporting;

namespace StudioBot.Chat.Tests.Exporting;

/// <summary>RFC 4180, section 2; read back by a reader that is not ours.</summary>
public sealed class CsvWriterTests
{
    private static readonly Gen<string[][]> Rows =
        Gen.Char["\"\",;\r\n \t=+a1é漢'"].Array[0, 8].Select(letters => new string(letters))
            .Array[3].Array[1, 5];

    [Fact]
    public void A_row_is_a_line_that_ends_with_CRLF() =>       // rules 1 and 4
        Assert.Equal("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", Written(["aaa", "bbb", "ccc"], ["zzz", "yyy", "xxx"]));

    [Fact]
    public void What_holds_a_line_break_a_quote_or_a_comma_is_quoted() =>      // rule 6
        Assert.Equal("aaa,\"b\r\nbb\",\"c,c\"\r\nzzz,yyy,xxx\r\n", Written(["aaa", "b\r\nbb", "c,c"], ["zzz", "yyy", "xxx"]));

    [Fact]
    public void A_quote_within_is_doubled() =>      // rule 7
        Assert.Equal("aaa,\"b\"\"bb\",ccc\r\n", Written(["aaa", "b\"bb", "ccc"]));

    [Fact]
    public void A_figure_of_ours_needs_no_shield_and_words_do()
    {
        using var to = new StringWriter(CultureInfo.InvariantCulture);
        new StudioBot.Chat.Exporting.CsvWriter(to).Write([new Cell("-5", IsTyped: true), Cell.Of("-5")]);
        Assert.Equal("-5,'-5\r\n", to.ToString());
    }

    [Fact]
    public void Another_reader_reads_what_was_written() => Rows.Sample(rows =>
    {
        using var csv = new CsvParser(new StringReader(Written(rows)), new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            HasHeaderRecord = false,
            NewLine = "\r\n",
            IgnoreBlankLines = false,
        });
        List<string[]> read = [];
        while (csv.Read())
        {
            read.Add([.. csv.Record!.Select(FormulaShield.Take)]);
        }

        Assert.Equal(rows, read);
    });

    private static string Written(params string[][] rows)
    {
        using var to = new StringWriter(CultureInfo.InvariantCulture);
        var csv = new StudioBot.Chat.Exporting.CsvWriter(to);
        foreach (var row in rows)
        {
            csv.Write([.. row.Select(Cell.Of)]);
        }

        return to.ToString();
    }
}
