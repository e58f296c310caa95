using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class AgainCommandTests
{
    // 17: ocean, a bloom on a 30 cm square, 270 mL of which 189 medium; the same film on a 40 cm round with three
    // quarters of the run-off a square loses takes (1256.6·1.15)/(900·1.20) = 1.338 times as much: 361 mL, 253 of medium
    [Theory]
    [InlineData(@"17 again: mix 365 ml")]
    [InlineData(@"medium +255 ml")]
    [InlineData(@"blue mica +9 g")]
    [InlineData(@"1\.34 times as much as 17")]
    [InlineData(@"ocean, bloom, still drying")]
    [InlineData(@"Dust mask")]
    [InlineData(@"Invented studio")]
    public void A_piece_is_poured_again_in_a_new_size(string pattern) =>
        Assert.Matches(pattern, Sample.Answer("again 17 on 40cm round")!.PlainText);

    [Fact]
    public void The_same_size_is_the_same_recipe() =>
        Assert.Matches(@"mix 270 ml[\s\S]*1 times as much", Sample.Answer("again 17 on 30cm panel")!.PlainText);

    [Fact]
    public void A_piece_whose_colours_nobody_recorded_comes_by_layers()
    {
        var text = Sample.Answer("again 16 on 12in panel")!.PlainText;

        Assert.Contains("not on record", text, StringComparison.Ordinal);
        Assert.Contains("Base coat", text, StringComparison.Ordinal);
    }
}
