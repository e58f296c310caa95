namespace StudioBot.Chat.Tests.Asking;

public sealed class ScaleCommandTests
{
    // The studio's ocean: medium 140, white 25, ultramarine 30, lamp black 5 ml, blue mica 5, silver mica 2 g.
    [Theory]
    [InlineData("medium", "280 ml")]
    [InlineData("white", "50 ml")]
    [InlineData("lamp black", "10 ml")]
    [InlineData("blue mica", "10.0 g")]
    [InlineData("silver mica", "4.0 g")]
    public void Twice_the_recipe_is_twice_every_part(string part, string amount) =>
        Assert.Matches($@"{part}\s+{amount}", Phone.Says("scale ocean to 400 ml"));

    [Fact]
    public void What_rounding_costs_is_said()
    {
        Assert.Contains("Rounded to 5 ml, 0.1 g: recipe kept", Phone.Says("scale ocean to 400 ml"), StringComparison.Ordinal);
        Assert.Contains("Make more", Phone.Says("scale ocean to 30 ml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Unrounded_parts_make_the_size_asked_for() // 400 mL over 200 mL + 7 g of 2.8 g/mL: 202.5 mL
    {
        var said = Phone.Says("scale ocean to 405 ml exact");

        Assert.Matches(@"medium\s+280 ml", said);
        Assert.Matches(@"blue mica\s+10.0 g", said);
    }

    [Fact]
    public void A_surface_takes_film_run_off_and_a_cups_rest()
    {
        // 1256.6 cm² × 2.5 mm = 314.2 mL; run-off 0.2 × 7.5/10 = 0.15 of it, 3 mL in the cup: 364.3 mL.
        Assert.StartsWith("ocean, 364 ml before rounding", Phone.Says("scale ocean for 40cm round exact"), StringComparison.Ordinal);
        Assert.Contains("bloom taken: 2.5 mm film", Phone.Says("scale ocean for 40cm round"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("scale ocean to 400 g round", "400 g round")]
    [InlineData("scale ocean for 40cm round 400 ml", "400 ml")]
    [InlineData("scale ocean", "")]
    public void A_size_is_a_surface_or_an_amount(string words, string word) => Assert.Equal(word, Phone.Blames(words));

    [Fact]
    public void Powder_asks_for_a_mask() =>
        Assert.Contains("! Dust mask; the product's sheet first.", Phone.Says("scale ocean to 400 ml"), StringComparison.Ordinal);

    [Theory]
    [InlineData("scale ocean to 400 ml")]
    [InlineData("scale ocean for 40cm round")]
    [InlineData("scale ocean for 2 tiles 10cm swipe")]
    [InlineData("scale ocean to 30 ml")]
    [InlineData("scale dusk to 1.2 L")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
