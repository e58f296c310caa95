using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class StudioShiftTests
{
    [Fact]
    public void Nothing_finished_teaches_nothing() => Assert.Equal(StudioShift.Untaught, StudioShift.From([]));

    [Fact]
    public void A_slow_studio_learns_that_it_is_slow_and_gets_surer()
    {
        // Pieces twice as slow as common practice: not yet after 14 equivalent days, dry after 18, at 2.5 mm.
        var few = StudioShift.From([.. Enumerable.Repeat(Piece(14, 18), 3)]);
        var many = StudioShift.From([.. Enumerable.Repeat(Piece(14, 18), 30)]);

        Assert.InRange(few.Mean, 0.1, Math.Log(2));
        Assert.InRange(many.Mean, few.Mean, Math.Log(2.2));
        Assert.True(many.Deviation < few.Deviation && few.Deviation < StudioShift.Untaught.Deviation);
        Assert.Equal(30, many.Pieces);
    }

    [Fact]
    public void A_piece_only_ever_called_dry_late_says_little() =>
        Assert.InRange(StudioShift.From([Piece(null, 30)]).Mean, -0.05, 0.05);

    [Fact]
    public void Only_the_last_fifty_count()
    {
        var old = Enumerable.Repeat(Piece(14, 18), 40);
        var recent = Enumerable.Repeat(Piece(4, 5), 50).ToList();

        Assert.Equal(StudioShift.From(recent), StudioShift.From([.. old, .. recent]));
    }

    private static Lesson Piece(double? notYet, double dry)
    {
        List<MakerWord> words = [new(TimeSpan.FromDays(dry), MakerSays.Dry)];
        if (notYet is { } days)
        {
            words.Add(new MakerWord(TimeSpan.FromDays(days), MakerSays.NotYet));
        }

        return new Lesson(new DryingPiece(Length.FromMillimetres(2.5), Mass.FromGrams(150)) { Words = words });
    }
}
