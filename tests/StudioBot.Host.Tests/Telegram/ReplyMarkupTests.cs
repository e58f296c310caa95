using StudioBot.Chat.Replies;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Telegram;

public sealed class ReplyMarkupTests
{
    [Fact]
    public void Each_kind_of_block_has_its_look()
    {
        var (html, plain) = Assert.Single(ReplyMarkup.Parts(new Reply(
            new Block.Headline("250 mL"),
            new Block.Line("at 3:1"),
            new Block.Figures([new("A", "187.5 mL"), new("B", "62.5 mL")]),
            new Block.Sample("ratio 3:1 250 ml"),
            new Block.Caution("gloves"))));
        Assert.Equal(
            "<b>250 mL</b>\nat 3:1\n<pre>A  187.5 mL\nB   62.5 mL</pre>\n"
                + "<code>ratio 3:1 250 ml</code>\n⚠ gloves",
            html);
        Assert.Equal("250 mL\nat 3:1\nA  187.5 mL\nB   62.5 mL\nratio 3:1 250 ml\n⚠ gloves", plain);
    }

    [Theory]
    [InlineData("1 < 2 & 3 > 2")]
    [InlineData("</pre><b>bold</b>")]
    [InlineData("<a href=\"tg://user?id=1\">tap</a>")]
    [InlineData("&lt; stays &amp; stays &nbsp;")]
    [InlineData("<<<<>>>>&&&&;")]
    [InlineData("\u202e right to left \u200b")]
    public void Hostile_text_says_what_it_says_and_does_nothing(string hostile)
    {
        Block[] blocks =
        [
            new Block.Headline(hostile),
            new Block.Line(hostile),
            new Block.Figures([new(hostile, hostile)]),
            new Block.Sample(hostile),
            new Block.Caution(hostile),
        ];
        Assert.All(blocks, block =>
        {
            var (html, plain) = Assert.Single(ReplyMarkup.Parts(new Reply(block)));
            var (text, trouble) = MarkupRules.Read(html);
            Assert.Null(trouble);
            Assert.Equal(plain, text);
            Assert.Contains(hostile, text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_long_reply_is_split_at_line_ends_with_whole_tags()
    {
        var rows = Enumerable.Range(0, 300).Select(row => new Figure($"<material> {row}", $"{row} mL")).ToList();
        var parts = ReplyMarkup.Parts(new Reply(new Block.Headline("Stock"), new Block.Figures(rows)));
        Assert.True(parts.Count > 1);
        Assert.All(parts, part => AssertTaken(part.Html, part.Plain));
        Assert.Equal(
            FigureTable.Lines(rows).Prepend("Stock"), parts.SelectMany(part => part.Plain.Split('\n')));
    }

    [Theory]
    [InlineData("word ")]
    [InlineData("w")]
    [InlineData("🎨")]       // two halves a character: neither may be parted
    [InlineData("&")]
    public void A_line_that_alone_is_too_long_is_cut_and_loses_no_letter(string unit)
    {
        var line = string.Concat(Enumerable.Repeat(unit, 3000 * (4 / unit.Length + 1)));
        var parts = ReplyMarkup.Parts(new Reply(new Block.Line(line)));
        Assert.All(parts, part => AssertTaken(part.Html, part.Plain));
        Assert.Equal(Letters(line), Letters(string.Concat(parts.Select(part => part.Plain))));
        Assert.All(parts, part => Assert.False(char.IsHighSurrogate(part.Plain[^1])));
    }

    [Fact]
    public void Random_replies_of_any_length_are_taken_by_the_service()
    {
        const int seed = 20261125;
        var random = new Random(seed);
        for (var round = 0; round < 500; round++)
        {
            var blocks = Enumerable.Range(0, random.Next(1, 60)).Select(_ => AnyBlock(random)).ToList();
            Assert.All(ReplyMarkup.Parts(new Reply(blocks, [])), part => AssertTaken(part.Html, part.Plain));
        }
    }

    [Fact]
    public void Nothing_but_blanks_is_still_an_answer() =>
        Assert.False(string.IsNullOrWhiteSpace(Assert.Single(ReplyMarkup.Parts(new Reply(new Block.Line(" ")))).Plain));

    [Fact]
    public void A_repeat_says_so_unless_that_makes_it_too_long()
    {
        var repeated = ReplyMarkup.MaybeRepeated(Support.Letters.Saying("250 mL"));
        Assert.StartsWith("250 mL\n(", repeated.Plain, StringComparison.Ordinal);
        var full = Support.Letters.Saying(new string('x', 4096));
        Assert.Equal(full, ReplyMarkup.MaybeRepeated(full));
    }

    private static string Letters(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static void AssertTaken(string html, string plain)
    {
        Assert.InRange(plain.Length, 1, ReplyMarkup.Longest);
        var (text, trouble) = MarkupRules.Read(html);
        Assert.Null(trouble);
        Assert.Equal(plain, text);
    }

    private static Block AnyBlock(Random random)
    {
        const string Alphabet = "ab <>&;\n\"'/é🎨  ";
        var letters = Enumerable.Range(0, random.Next(0, 900)).Select(_ => Alphabet[random.Next(Alphabet.Length)]);
        var text = new string([.. letters]);
        return random.Next(5) switch
        {
            0 => new Block.Headline(text),
            1 => new Block.Line(text),
            2 => new Block.Figures([new Figure(text, "1"), new Figure("b", text)]),
            3 => new Block.Sample(text),
            _ => new Block.Caution(text),
        };
    }
}
