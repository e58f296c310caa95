using StudioBot.Chat.Importing;

namespace StudioBot.Chat.Tests.Importing;

/// <summary>Examples: RFC 4180, section 2, by the number of its rule.</summary>
public sealed class CsvReaderTests
{
    [Theory]
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", "aaa|bbb|ccc/zzz|yyy|xxx")]                     // 1
    [InlineData("aaa,bbb,ccc\r\nzzz,yyy,xxx", "aaa|bbb|ccc/zzz|yyy|xxx")]                         // 2
    [InlineData(" a ,b", " a |b")]                                                                // 4: blanks are part of a cell
    [InlineData("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|bbb|ccc/zzz|yyy|xxx")]             // 5
    [InlineData("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa|b\r\nbb|ccc/zzz|yyy|xxx")]     // 6
    [InlineData("\"aaa\",\"b\"\"bb\",\"ccc\"", "aaa|b\"bb|ccc")]                                  // 7
    [InlineData("a,\r\n,b", "a|/|b")]
    [InlineData("a,b\nc,d\re,f", "a|b/c|d/e|f")]
    [InlineData("a\r\n\r\n , \r\nb", "a/b")]
    [InlineData("\"\",\"\"\"\"", "|\"")]
    public void Rows_are_read_as_the_standard_has_them(string text, string rows)
    {
        List<ImportTrouble> troubles = [];
        var read = new CsvReader(text, ',', troubles).Rows().ToList();
        Assert.Equal(rows, string.Join('/', read.Select(row => string.Join('|', row.Cells))));
        Assert.Empty(troubles);
    }

    [Theory]
    [InlineData("a\nb,5\" tile\nc", 2, "a \" stands within “5\" tile”", "a/c")]
    [InlineData("a\n\"b\nb\"x,1\nc", 3, "something stands behind the closing \" of “b b”", "a/c")]
    [InlineData("a\r\n\"b\r\nc", 2, "a \" is never closed", "a")]
    [InlineData("a\n\"b\nb\",\"c\nd", 2, "the \" of line 3 is never closed", "a")]
    public void What_is_no_row_is_told_with_its_line_and_the_rest_is_read(string text, int line, string what, string rows)
    {
        List<ImportTrouble> troubles = [];
        var read = new CsvReader(text, ',', troubles).Rows().ToList();
        var trouble = Assert.Single(troubles);
        Assert.Equal((line, what), (trouble.Line, trouble.What));
        Assert.Equal(rows, string.Join('/', read.Select(row => string.Join('|', row.Cells))));
    }

    [Theory]
    [InlineData("a\r\nb\r\nc")]
    [InlineData("a\nb\nc")]
    [InlineData("a\rb\rc")]
    public void A_row_knows_its_line_whatever_ends_it(string text) =>
        Assert.Equal([1, 2, 3], new CsvReader(text, ',', []).Rows().Select(row => row.Line));

    [Fact]
    public void Line_ends_within_a_cell_count() =>
        Assert.Equal([1, 4], new CsvReader("\"a\r\nb\nc\"\r\nd", ',', []).Rows().Select(row => row.Line));
}
