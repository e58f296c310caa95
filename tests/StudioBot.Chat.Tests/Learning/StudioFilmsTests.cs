using System.Globalization;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Learning;

/// <summary>What is said of paint once own pours were measured. Figures are those of the normal-normal update (lecture notes),
/// with a prior worth four pours (common practice), worked by hand.</summary>
public sealed class StudioFilmsTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    // A 30 cm square has 900 cm², and bloom's run-off of 0.2 makes 3.0 mm laid 3.6 mm of need.
    public StudioFilmsTests() => studio.Tells("technique bloom film 3.0mm");

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Three_pours_move_the_need_towards_them()
    {
        Poured(288, 270, 297);      // 3.2, 3.0 and 3.3 mm: (4 · 3.6 + 9.5) / 7 = 3.414 mm

        var grounds = studio.Hear("amounts 30cm panel bloom 6 colours grounds");

        Assert.Matches(@"Need a face, own +3\.41 mm", grounds);
        Assert.Contains("From 3 own pours", grounds, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_enough_four_times_of_five()
    {
        Poured(288, 270, 297);

        // sd of the next pour 0.5 · √(1 + 1/7) = 0.5345 mm; (3.4143 + 0.84 · 0.5345) mm · 900 cm² = 347.7 ml, and 8 cups of 3 ml.
        var said = studio.Hear("amounts 30cm panel bloom 6 colours");

        Assert.Contains("By 3 own pours: enough 4 times of 5", said, StringComparison.Ordinal);
        var mixed = int.Parse(System.Text.RegularExpressions.Regex.Match(said, @"Mix (\d+) ml").Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.InRange(mixed, 371, 392);    // each cup is rounded up to what it can measure
    }

    [Fact]
    public void A_recipe_is_scaled_to_a_surface_by_the_own_pours_too()
    {
        studio.Tells("recipe reef 3 ml medium 1 ml white");
        Assert.Contains("common practice", studio.Hear("scale reef for 30cm panel bloom exact"), StringComparison.Ordinal);
        Poured(288, 270, 297);

        // As above 347.7 ml, and one cup of 3 ml.
        var said = studio.Hear("scale reef for 30cm panel bloom exact");
        Assert.StartsWith("reef, 351 ml before rounding", said, StringComparison.Ordinal);
        Assert.Contains("bloom: by 3 own pours, enough 4 times of 5.", said.Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_is_poured_again_by_them_too()
    {
        Poured(288, 270, 297);

        // As above 347.7 ml, and 8 cups of 3 ml: 371.7; by common practice it is (3.0 · 1.2) mm · 900 cm² and the cups, 348 ml.
        var said = studio.Hear("again 1 on 30cm panel");
        Assert.StartsWith("1 again: mix 375 ml", said, StringComparison.Ordinal);
        Assert.Contains("by layers, 3 own pours.", said.Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void One_that_ran_short_says_only_that_the_need_was_more()
    {
        studio.Tells("technique bloom film 2.5mm");     // 3.0 mm of need
        Poured(288, 270, 306);                          // 3.2, 3.0 and 3.4 mm
        studio.Tells("note 3 it ran short at a corner");

        // On a grid 3.132 mm; averaged in it would be 3.086, left out 3.033.
        Assert.Matches(@"Need a face, own +3\.13 mm", studio.Hear("amounts 30cm panel bloom 6 colours grounds"));
    }

    [Fact]
    public void A_slip_by_ten_is_left_out_and_named()
    {
        Poured(288, 270, 2970, 297, 279);

        var grounds = studio.Hear("amounts 30cm panel bloom 6 colours grounds");

        Assert.Contains("From 4 own pours", grounds, StringComparison.Ordinal);
        Assert.Contains("Left out as slips: 3.", grounds, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_what_was_left_in_the_cups_nothing_is_learnt()
    {
        studio.Tells("pour 30cm panel bloom 6 colours 288 ml");
        Assert.Contains("Common practice:", studio.Hear("amounts 30cm panel bloom 6 colours"), StringComparison.Ordinal);
    }

    [Fact]
    public void From_eight_pours_on_a_maker_s_own_stand_for_themselves()
    {
        Poured(270, 270, 270);
        for (var piece = 0; piece < 8; piece++)
        {
            Pour(360, "Pia");
        }

        Assert.Contains("By 11 own pours", studio.Hear("amounts 30cm panel bloom 6 colours"), StringComparison.Ordinal);
        Assert.Contains("By Pia's 8 own pours", studio.Hear("amounts 30cm panel bloom 6 colours", "Pia"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_technique_says_what_it_goes_by_and_since_when()
    {
        Poured(288, 270, 297);
        Assert.Contains("Since 25 Nov, 3 own pours: 3.41 mm a face with run-off", studio.Hear("technique bloom"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_told_before_is_held_against_what_came()
    {
        Assert.StartsWith("Too few to tell yet", studio.Hear("studio accuracy"), StringComparison.Ordinal);
        Poured(225, 225, 225, 225, 225, 225, 225, 225);     // 2.5 mm, where 3.6 mm were believed

        var said = studio.Hear("studio accuracy");

        Assert.StartsWith("Your own films beat common practice", said, StringComparison.Ordinal);
        Assert.Contains("Paint, 8 pours: off by", said, StringComparison.Ordinal);
        Assert.Matches(@"common\s+practice\s+by 1\.10? mm", said);
    }

    private void Poured(params int[] millilitres)
    {
        foreach (var used in millilitres)
        {
            Pour(used, "Mira");
        }
    }

    private void Pour(int used, string by)
    {
        studio.Now += TimeSpan.FromMinutes(2);
        studio.Tells(string.Create(CultureInfo.InvariantCulture, $"pour 30cm panel bloom 6 colours {used + 12} ml left 12"), by);
    }
}
