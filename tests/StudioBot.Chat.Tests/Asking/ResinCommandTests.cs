using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class ResinCommandTests
{
    [Fact]
    public void A_round_gets_film_and_run_off_in_two_parts_by_volume_and_mass()
    {
        // 706.858 cm² × 3 mm = 212.06 mL, a tenth more runs off; A 155.51 mL × 1.13 = 175.72 g, B 77.75 mL × 0.98 g/mL.
        var said = Phone.Says("resin 30cm round 3mm 2:1");

        Assert.StartsWith("233.3 ml = 251.9 g", said, StringComparison.Ordinal);
        Assert.Matches(@"Part A\s+155.5 ml\s+175.7 g", said);
        Assert.Matches(@"Part B\s+77.8 ml\s+76.2 g", said);
        Assert.Contains("3 mm film 212.1 ml, run-off 10 % 21.2 ml", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_large_amount_goes_into_safe_cups_with_running_scale_readings()
    {
        // 850 mL in cups of at most 300: 3 of 283.3 mL; A 188.9 mL × 1.13 = 213.4 g, then 94.4 mL × 0.98 more.
        var said = Phone.Says("resin 850 ml 2:1");

        Assert.Contains("3 cups: A to 213.4 g, then B to 306.0 g", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_warm_room_halves_the_cup() => // above 26 °C 150 mL a cup (common practice)
        Assert.Contains("2 cups", Phone.Says("resin 30cm round 3mm 2:1 28C 40%"), StringComparison.Ordinal);

    [Fact]
    public void Two_coats_are_mixed_one_after_the_other()
    {
        var said = Phone.Says("resin 30cm round 3mm 2:1 2 coats");

        Assert.Contains("424.1 ml", said, StringComparison.Ordinal);
        Assert.Contains("1 cup a coat: A to 175.7 g", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_total_by_weight_is_split_by_weight() => // 300 g at 100:45: proportion
        Assert.Contains("206.9 g", Phone.Says("resin 300g 100:45 by weight"), StringComparison.Ordinal);

    [Fact]
    public void The_room_last_read_says_how_long_it_flows_and_whether_the_air_suits()
    {
        // 40 min at 21 °C (from memory) is 43 min at 20 °C by Arrhenius with 55 kJ/mol; dew point 10.7 °C, piece 19 °C.
        var said = Phone.Says("resin 30cm round 3mm 2:1");

        Assert.Contains("20 °C 55 %, studio 80 min ago: flows 43 min; air yes, dew point 8.3 °C off", said, StringComparison.Ordinal);
        Assert.Contains("(Invented studio.)", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Damp_air_says_what_to_do_first() =>
        Assert.Contains("! First room and piece at 19 °C, day and night.", Phone.Says("resin 30cm round 2:1 18C 80%"), StringComparison.Ordinal);

    [Fact]
    public void Pieces_that_still_dry_are_named() => // 17, 18 and 21 are a 30 cm panel, a 30 cm round and a 25 cm panel
        Assert.Contains("Still drying: 17, 18, 21.", Phone.Says("resin 17 18 21 2mm"), StringComparison.Ordinal);

    [Fact]
    public void What_nobody_said_is_shown_as_taken() =>
        Assert.Contains("Taken: 2:1 by volume, film.", Phone.Says("resin 30cm round"), StringComparison.Ordinal);

    [Theory]
    [InlineData("resin 30cm round 12mm 2:1", "12mm")] // over 10 mm (common practice)
    [InlineData("resin 30cm round 3:1:0.5", "3:1:0.5")]
    [InlineData("resin 3mm 2:1", "")]
    public void A_cast_a_third_part_or_nothing_to_coat_is_no_coat(string words, string word) => Assert.Equal(word, Phone.Blames(words));

    [Theory]
    [InlineData("resin 30cm round 3mm 2:1")]
    [InlineData("resin 30cm round")]
    [InlineData("resin 17 18 2mm")]
    [InlineData("resin 17 2mm")]
    [InlineData("resin for 17 two coats")]
    [InlineData("resin 60x120cm 2mm 2:1")]
    [InlineData("resin 30cm round 5mm 1:1 8C 90%")]
    [InlineData("resin 2 tiles 10cm + 1 panel 40cm 2 cm deep 3:1 2 coats 18C 72%")]
    [InlineData("resin 30cm round 3mm 2:1 cups")]
    [InlineData("resin 30cm panel 2 cm deep 2:1 grounds")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);

    [Fact]
    public void Cups_come_with_the_heat_in_full() =>
        Assert.Contains("outdoors onto stone", Phone.Says(Sample.Answer("resin 30cm round 3mm 2:1")!.Buttons[0].Line), StringComparison.Ordinal);
}
