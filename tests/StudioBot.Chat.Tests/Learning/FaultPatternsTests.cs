using System.Globalization;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Learning;

public sealed class FaultPatternsTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Where_no_piece_has_it_the_records_are_silent()
    {
        Poured(4, "bloom", "cells everywhere");
        Assert.DoesNotContain("on record", studio.Hear("why cracks"), StringComparison.Ordinal);
    }

    [Fact]
    public void One_or_two_are_too_few_to_tell()
    {
        Poured(20, "bloom", null);
        Poured(2, "swipe", "cracks at the rim");
        Assert.Contains(
            "Here 2 pieces of 22 on record: too few to tell what they share.", Words("why cracks"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_comes_with_it_far_more_often_than_chance_is_named_with_its_counts()
    {
        Poured(20, "bloom", null);
        Poured(1, "bloom", "crack near the rim");
        Poured(5, "swipe", "cracked while drying");
        Poured(1, "swipe", "no cracks at all");

        // 5 of 6 against 1 of 21: by chance 127 of 296,010 times (C(6,5)·C(21,1) + 1 of C(27,6)), worked by hand.
        Assert.Contains(
            "Here 6 pieces of 27 on record: 5 of 6 poured as swipe, 1 of 21 without; chance alone hardly does that.",
            Words("why cracks"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_air_of_the_room_within_half_a_day_before_counts()
    {
        studio.Tells("room 20C 75%");
        Poured(5, "bloom", "crack near the rim");
        studio.Now += TimeSpan.FromDays(2);
        studio.Tells("room 20C 45%");
        Poured(20, "bloom", null);

        // By chance 1 of C(25,5) = 53,130 times.
        Assert.Contains("5 of 5 in air over 60 %, 0 of 20 without", Words("why cracks"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_lots_that_a_pour_drew_on_count()
    {
        studio.Tells("bought 2000 ml white 20.00 lot W-1");
        studio.Tells("bought 2000 ml lamp black 20.00 lot K-1");
        Poured(5, "bloom", "crack near the rim", "white, lamp black");
        studio.Tells("stop lot W-1 lumpy");
        studio.Tells("bought 2000 ml white 20.00 lot W-2");
        Poured(20, "bloom", null, "white, lamp black");

        Assert.Contains("5 of 5 with lot W-1, 0 of 20 without", Words("why cracks"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_lots_that_a_coat_drew_on_count()
    {
        studio.Tells("bought 4 kg resin A 60.00 lot R-1");
        studio.Tells("bought 2 kg hardener B 60.00 lot H-1");
        Poured(25, "bloom", null);
        Coated(1, 20, null);
        studio.Tells("stop lot H-1 old");
        studio.Tells("bought 2 kg hardener B 60.00 lot H-2");
        Coated(21, 25, "sticky");

        // By chance 1 of C(25,5) = 53,130 times.
        Assert.Contains("5 of 5 coated from lot H-2, 0 of 20 without", Words("why is my resin sticky"), StringComparison.Ordinal);
    }

    // Only what is coated can be sticky: against the thirty that are not, 4 of 10 would stand out, though all ten share the lot.
    [Fact]
    public void A_coats_lot_is_looked_for_among_what_was_coated()
    {
        studio.Tells("bought 4 kg resin A 60.00 lot R-1");
        studio.Tells("bought 2 kg hardener B 60.00 lot H-1");
        Poured(40, "bloom", null);
        Coated(1, 6, null);
        Coated(7, 10, "sticky");

        Assert.Contains(
            "Here 4 pieces of 40 on record: nothing they share stands out from chance.",
            Words("why is my resin sticky"),
            StringComparison.Ordinal);
    }

    // Twenty in the studio and five in the cupboard; the five crack before or after they are put there.
    [Theory]
    [InlineData("shelf {0} D", "note {0} crack near the rim", "5 of 5 that lay in the room cupboard, 0 of 20 without")]
    [InlineData("note {0} crack near the rim", "shelf {0} D", "nothing they share stands out from chance")]
    public void The_room_in_which_a_piece_lay_until_then_counts(string first, string then, string says)
    {
        studio.Tells("shelf N in studio");
        studio.Tells("shelf D in cupboard");
        Poured(25, "bloom", null);
        for (var piece = 1; piece <= 25; piece++)
        {
            studio.Tells($"shelf {piece} N");
        }

        for (var piece = 21; piece <= 25; piece++)
        {
            studio.Now += TimeSpan.FromMinutes(2);
            studio.Tells(string.Format(CultureInfo.InvariantCulture, first, piece));
            studio.Tells(string.Format(CultureInfo.InvariantCulture, then, piece));
        }

        Assert.Contains(says, Words("why cracks"), StringComparison.Ordinal);
    }

    [Fact]
    public void How_a_batch_flowed_counts_beside_the_others()
    {
        studio.Tells("bought 10 l neutral base 90.00");
        studio.Tells("bought 4 l gloss varnish 60.00");
        foreach (var (batch, seconds) in new[] { (1, 21), (2, 22), (3, 33), (4, 34) })
        {
            studio.Now += TimeSpan.FromMinutes(2);
            studio.Tells($"mix medium 3 l ford4 {seconds} s 20C");
            Poured(seconds < 30 ? 10 : 3, "bloom", seconds < 30 ? null : "crack near the rim", $"3 colours batch {batch}");
        }

        Assert.Contains("6 of 6 from batches thicker than most, 0 of 20 without", Words("why cracks"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_spread_evenly_stands_out_from_nothing()
    {
        Poured(10, "bloom", null);
        Poured(10, "swipe", null);
        Poured(3, "bloom", "crack near the rim");
        Poured(3, "swipe", "crack near the rim");
        Assert.Contains("nothing they share stands out from chance.", Words("why cracks"), StringComparison.Ordinal);
    }

    private void Poured(int count, string technique, string? note, string with = "3 colours")
    {
        for (var piece = 0; piece < count; piece++)
        {
            studio.Now += TimeSpan.FromMinutes(2);
            studio.Tells($"pour 20cm panel {technique} {with}");
            if (note is not null)
            {
                studio.Tells($"note {studio.Look(view => view.Pieces.Numbers()[^1])} {note}");
            }
        }
    }

    private void Coated(int from, int to, string? note)
    {
        for (var piece = from; piece <= to; piece++)
        {
            studio.Now += TimeSpan.FromMinutes(2);
            Assert.True(studio.Say($"coat {piece} 60 ml 2:1 20C 50%", agreed: true).Recorded);
            if (note is not null)
            {
                studio.Tells($"note {piece} {note}");
            }
        }
    }

    private string Words(string asked) => studio.Hear(asked).ReplaceLineEndings(" ");
}
