using System.Text;
using StudioBot.Chat.Replies;
using StudioBot.Host.Telegram;

namespace StudioBot.Host.Tests.Telegram;

public sealed class KeyboardTests
{
    [Fact]
    public void A_short_line_is_carried_by_its_button()
    {
        var keyboard = new Keyboard([new Button("Double", "ratio 3:1 500 ml")]);
        Assert.Equal("ratio 3:1 500 ml", Assert.Single(Assert.Single(keyboard.Rows)).Data);
        Assert.Empty(keyboard.Kept);
    }

    [Theory]
    [InlineData(64, 0)]
    [InlineData(65, 1)]
    public void Sixty_four_bytes_are_the_most(int letters, int kept) =>
        Assert.Equal(kept, new Keyboard([new Button("x", new string('a', letters))]).Kept.Count);

    [Fact]
    public void Bytes_count_not_letters()
    {
        var keyboard = new Keyboard([new Button("x", new string('ж', 33))]);   // two bytes a letter
        var (key, button) = Assert.Single(keyboard.Kept);
        Assert.Equal(new string('ж', 33), button.Line);
        var data = keyboard.Rows[0][0].Data;
        Assert.Equal(key, Keyboard.KeyIn(data));
        Assert.InRange(Encoding.UTF8.GetByteCount(data), 1, Keyboard.MostBytes);
    }

    [Fact]
    public void A_kept_line_has_a_key_of_ninety_six_bits_that_never_comes_twice()
    {
        var lines = Enumerable.Range(0, 500).Select(_ => new Button("x", new string('a', 65)));
        var keys = new Keyboard(lines).Kept.Select(kept => kept.Key).ToList();
        Assert.Equal(keys.Count, keys.Distinct().Count());
        Assert.All(keys, key => Assert.Equal(16, key.Length));   // 12 bytes, four letters for three
    }

    [Fact]
    public void A_button_that_may_record_is_kept_however_short_its_line()
    {
        var keyboard = new Keyboard([new Button("Undo", "undo act 7") { Records = true }]);
        var (key, button) = Assert.Single(keyboard.Kept);
        Assert.Equal("undo act 7", button.Line);
        Assert.Equal(key, Keyboard.KeyIn(keyboard.Rows[0][0].Data));
    }

    [Fact]
    public void A_line_is_not_taken_for_a_key() => Assert.Null(Keyboard.KeyIn("ratio 3:1 500 ml"));

    [Theory]
    [InlineData(new[] { "a", "b", "c", "d" }, new[] { 3, 1 })]
    [InlineData(new[] { "Log it", "Add resin", "Other" }, new[] { 3 })]
    [InlineData(new[] { "Another technique", "How it was worked out" }, new[] { 1, 1 })]
    public void Rows_hold_three_at_most_and_fewer_where_words_are_long(string[] labels, int[] rows)
    {
        var keyboard = new Keyboard(labels.Select(label => new Button(label, label)));
        Assert.Equal(rows, keyboard.Rows.Select(row => row.Count));
    }
}
