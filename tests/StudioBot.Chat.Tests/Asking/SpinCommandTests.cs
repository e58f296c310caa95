using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class SpinCommandTests
{
    [Fact]
    public void A_spin_leaves_what_the_thinning_law_says()
    {
        // Emslie, Bonner and Peck 1958 with 2.5 mm, 1.05 g/mL, 1 Pa·s, 120 rpm, 20 s: 0.467 mm, limit 0.476 mm.
        var said = Phone.Says("spin 4in tile 120 rpm 20 s 2.5mm");

        Assert.StartsWith("0.47 mm left, 81 % thrown off", said, StringComparison.Ordinal);
        Assert.Contains("0.48 mm", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thin_paint_is_thrown_further_than_a_thick_one()
    {
        // The same law with 0.3 and 3 Pa·s (common practice): 0.259 and 0.782 mm.
        var said = Phone.Says("spin 4in tile 120 rpm 20 s 2.5mm");

        Assert.Matches(@"thin paint\s+0.26 mm", said);
        Assert.Matches(@"thick one\s+0.78 mm", said);
    }

    [Fact]
    public void A_fast_rim_is_warned_of() => // ω²R/g at 7.18 cm and 120 rpm is 1.156
        Assert.Contains("1.2 times the weight", Phone.Says("spin 4in tile 120 rpm 20 s"), StringComparison.Ordinal);

    [Fact]
    public void A_rim_at_three_times_the_weight_is_refused() => // 3.21 at 200 rpm
        Assert.True(Sample.Answer("spin 4in tile 200 rpm 20 s")!.IsTrouble);

    [Fact]
    public void The_slower_speed_it_offers_is_calm() =>
        Assert.DoesNotContain("Fast", Phone.Says(Sample.Answer("spin 4in tile 200 rpm 20 s")!.Buttons[0].Line), StringComparison.Ordinal);

    [Fact]
    public void A_film_that_nobody_said_is_shown_as_taken() =>
        Assert.Matches(@"Film before, taken\s+2.5 mm", Phone.Says("spin 4in tile 90 rpm 20 s"));

    [Theory]
    [InlineData("spin 4in tile 120 rpm 20 s")]
    [InlineData("spin 30cm round 90 rpm 15 s 2.5 mm")]
    [InlineData("spin 4in tile 200 rpm 20 s")]
    [InlineData("spin 20cm tile 1 rpm 5 s")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
