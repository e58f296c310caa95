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
    public void What_is_spread_evenly_stands_out_from_nothing()
    {
        Poured(10, "bloom", null);
        Poured(10, "swipe", null);
        Poured(3, "bloom", "crack near the rim");
        Poured(3, "swipe", "crack near the rim");
        Assert.Contains("nothing they share stands out from chance.", Words("why cracks"), StringComparison.Ordinal);
    }

    private void Poured(int count, string technique, string? note)
    {
        for (var piece = 0; piece < count; piece++)
        {
            studio.Now += TimeSpan.FromMinutes(2);
            studio.Tells($"pour 20cm panel {technique} 3 colours");
            if (note is not null)
            {
                studio.Tells($"note {studio.Look(view => view.Pieces.Numbers()[^1])} {note}");
            }
        }
    }

    private string Words(string asked) => studio.Hear(asked).ReplaceLineEndings(" ");
}
