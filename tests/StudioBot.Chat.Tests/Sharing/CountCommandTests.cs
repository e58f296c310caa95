using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>Figures are worked by hand from the invented studio's shelf: white 820 ml, 1.30 g/ml.</summary>
public sealed class CountCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_book_takes_the_level_that_was_found()
    {
        // 40 ml of W-1 and 350 ml of W-2, each 17.50 for 1 L: 0.70 + 6.13
        Assert.Equal(
            "White: 430 ml, differs.\nThe book said 820 ml; 390 ml less booked as counted.\nBooked: 6.83 borne by use.",
            studio.Tells("count white 430 ml"));
        Assert.Equal(430, studio.Level("white"));
    }

    [Theory]
    [InlineData(800, "agrees")]     // 20 of 820
    [InlineData(779, "agrees")]     // 41 is 5 %
    [InlineData(778, "differs")]
    [InlineData(861, "agrees")]
    [InlineData(862, "differs")]
    public void Within_a_twentieth_it_agrees_and_the_difference_is_booked_all_the_same(int counted, string verdict)
    {
        Assert.StartsWith($"White: {counted} ml, {verdict}.", studio.Tells($"count white {counted} ml"), StringComparison.Ordinal);
        Assert.Equal(counted, studio.Level("white"));
    }

    [Theory]
    [InlineData(100, "White: 100 ml, differs.\nThe book said 780 ml; 680 ml less booked as counted.")]
    [InlineData(800, "White: 800 ml, agrees.\nThe book said 780 ml; 20 ml more booked as counted.")]
    public void Stopped_lots_are_left_alone_and_said_to_stand_apart(int counted, string said)
    {
        studio.Tells("stop lot W-1 yellowed");

        var words = studio.Tells($"count white {counted} ml");
        Assert.StartsWith(said, words, StringComparison.Ordinal);
        Assert.Contains("\nApart from it 40 ml white stopped, not counted.\n", words, StringComparison.Ordinal);
        Assert.Equal((40, counted, counted), (studio.Left("W-1"), studio.Left("W-2"), studio.Level("white")));
    }

    [Fact]
    public void What_is_found_beside_a_stopped_lot_goes_into_one_of_its_own()
    {
        studio.Tells("stop lots W-1 W-2");

        studio.Tells("count white 50 ml");

        Assert.Equal((40, 780, 50), (studio.Left("W-1"), studio.Left("W-2"), studio.Level("white")));
    }

    [Fact]
    public void A_lot_that_is_named_is_counted_alone_stopped_or_not()
    {
        studio.Tells("stop lot W-1 yellowed");

        Assert.StartsWith(
            "White, W-1: 25 ml, differs.\nThe book said 40 ml; 15 ml less booked as counted.",
            studio.Tells("count white 25 ml lot W-1"),
            StringComparison.Ordinal);
        Assert.StartsWith("White, W-1: 0 ml, differs.", studio.Tells("count white 0 ml lot W-1"), StringComparison.Ordinal);
        Assert.StartsWith("White, W-1: 30 ml, differs.", studio.Tells("count white 30 ml lot W-1"), StringComparison.Ordinal);
        Assert.Equal((30, 780), (studio.Left("W-1"), studio.Left("W-2")));
        Assert.StartsWith("“Z-99” is no lot of white. Nothing recorded.", studio.Refuses("count white 30 ml lot Z-99").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Gross_goes_less_the_bottle_by_density()
    {
        studio.Tells("material white bottle 62 g");

        // (612 − 62) g / 1.30 g/ml = 423.077 ml
        var said = studio.Tells("count white 612 g gross");
        Assert.StartsWith("White: 423.1 ml, differs.", said, StringComparison.Ordinal);
        Assert.Contains("Less the empty bottle.", said, StringComparison.Ordinal);
        Assert.Equal(423.077, studio.Level("white"));
    }

    [Fact]
    public void Gross_without_a_bottle_says_how_to_set_it() =>
        Assert.EndsWith("material white bottle 60 g", studio.Refuses("count white 612 g gross").PlainText, StringComparison.Ordinal);

    [Fact]
    public void A_bottle_weighs_no_more_than_what_stands_on_the_scale()
    {
        studio.Tells("material white bottle 62 g");
        Assert.Contains("less than the empty bottle", studio.Refuses("count white 40 g gross").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shelf_is_counted_in_one_message()
    {
        // lamp black 310 → 210; medium 950 → 1200, of no price; gold mica 38 as it was: 6.83 + 100 ml at 10.90 for 500 ml
        Assert.Equal(
            """
            4 counted, 1 agree; on the shelf now:
            white        430 ml
            lamp black   210 ml
            medium      1200 ml
            gold mica      38 g
            White: the book said 820 ml; 390 ml less booked as counted.
            Lamp black: the book said 310 ml; 100 ml less booked as counted.
            Booked: 9.01 borne by use.
            """.ReplaceLineEndings("\n"),
            studio.Tells("count\nwhite 430 ml\nlamp black 210 ml\nmedium 1.2 L\ngold mica 38 g"));
        Assert.Equal((430, 210, 1200, 38), (studio.Level("white"), studio.Level("lamp black"), studio.Level("medium"), studio.Level("gold mica")));
    }

    [Fact]
    public void Nothing_can_be_found()
    {
        studio.Tells("count cups 0");
        Assert.Equal(0, studio.Level("cup"));
    }

    [Fact]
    public void A_count_of_another_day_is_refused_where_something_moved_since()
    {
        studio.Tells("used 20 ml white");
        studio.Now += TimeSpan.FromMinutes(5);

        Assert.Contains("came or went since", studio.Refuses("count white 430 ml tuesday").PlainText, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("count white 430 ml")]
    [InlineData("count white 990 ml")]
    [InlineData("count white 90 ml lot W-1")]
    [InlineData("count gold mica 30 g, cups 12")]
    public void It_can_be_taken_back(string words) => studio.IsUndone(words);

    // The bottle W-1 holds 40 of its 1000 ml by the book; white as a whole 820 ml.
    [Theory]
    [InlineData("count white 300 ml lot W-1", "The book says 40 ml")]
    [InlineData("count white 1.2 l lot W-2", null)]
    public void One_bottle_is_compared_with_its_own_line_and_not_with_the_whole_level(string words, string? doubt)
    {
        if (doubt is null)
        {
            studio.Tells(words);
        }
        else
        {
            Assert.Contains(doubt, studio.Refuses(words).PlainText, StringComparison.Ordinal);
        }
    }
}
