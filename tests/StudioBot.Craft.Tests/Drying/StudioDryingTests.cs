using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class StudioDryingTests
{
    private static readonly Length Usual = Length.FromMillimetres(2.5);

    [Theory]
    [InlineData(null)]
    [InlineData("cupboard")]
    public void Nothing_finished_teaches_nothing(string? room)
    {
        var shift = StudioDrying.From([]).For(Usual, room);

        Assert.Equal((0, 0), (shift.Mean, shift.Pieces));
        Assert.Equal(StudioShift.Untaught.Deviation, shift.Deviation, 12);
    }

    [Fact]
    public void A_slow_studio_learns_that_it_is_slow_and_gets_surer()
    {
        // Pieces twice as slow as common practice: not yet after 14 equivalent days, dry after 18, at 2.5 mm.
        var few = Taught(Enumerable.Repeat(Piece(14, 18), 3));
        var many = Taught(Enumerable.Repeat(Piece(14, 18), 30));

        Assert.InRange(few.Mean, 0.1, Math.Log(2));
        Assert.InRange(many.Mean, few.Mean, Math.Log(2.2));
        Assert.True(many.Deviation < few.Deviation && few.Deviation < StudioShift.Untaught.Deviation);
        Assert.Equal(30, many.Pieces);
    }

    [Fact]
    public void A_piece_only_ever_called_dry_late_says_little() =>
        Assert.InRange(Taught([Piece(null, 30)]).Mean, -0.05, 0.05);

    [Fact]
    public void Only_the_last_fifty_count()
    {
        var old = Enumerable.Repeat(Piece(14, 18), 40);
        var recent = Enumerable.Repeat(Piece(4, 5), 50).ToList();

        Assert.Equal(Taught(recent), Taught(old.Concat(recent)));
    }

    // Two rooms read alike, but in one a fan runs: pieces take 8 days there and 12 in the other.
    [Fact]
    public void A_draughty_room_is_told_from_a_still_one()
    {
        var taught = StudioDrying.From([.. Enumerable.Range(0, 20).SelectMany(_ =>
            new[] { Piece(11.5, 12.5, room: "cupboard"), Piece(7.5, 8.5, room: "by the fan") })]);

        Assert.True(taught.For(Usual, "by the fan").Mean < taught.For(Usual, "cupboard").Mean - 0.2);
        Assert.Equal(["by the fan", "cupboard"], taught.Rooms.OrderBy(room => room.Factor).Select(room => room.Room));
        Assert.All(taught.Rooms, room => Assert.Equal(20, room.Pieces));
    }

    [Fact]
    public void Of_a_room_nothing_has_dried_in_less_is_sure_than_of_one_that_is_known()
    {
        var taught = StudioDrying.From([.. Enumerable.Repeat(Piece(14, 18, room: "cupboard"), 20)]);

        Assert.True(taught.For(Usual, "shed").Deviation > taught.For(Usual, "cupboard").Deviation);
        Assert.InRange(taught.For(Usual, "shed").Mean, 0.1, taught.For(Usual, "cupboard").Mean);
    }

    // By common practice twice the film takes 3.4 times as long; here it takes twice as long, so a power of 1.
    [Fact]
    public void Where_thick_films_take_less_longer_than_usual_the_power_comes_down()
    {
        List<Lesson> lessons = [.. Enumerable.Range(0, 25).SelectMany(_ =>
            new[] { Piece(4.8, 5.2, film: 1.5), Piece(9.6, 10.4, film: 3) })];

        Assert.InRange(StudioDrying.From(lessons).Exponent, 1, 1.45);
        Assert.InRange(StudioDrying.From(lessons[..2]).Exponent, 1.5, 1.75);
    }

    // A typed film of 25 mm for 2.5, and "not yet" dated to ten times the day.
    [Fact]
    public void What_no_piece_can_be_is_left_out_and_counted()
    {
        List<Lesson> clean = [.. Enumerable.Repeat(Piece(9, 11), 19)];
        var slipped = StudioDrying.From([.. clean, Piece(9, 11, film: 25), Piece(90, 110)]);

        Assert.Equal((19, 2), (slipped.Pieces, slipped.LeftOut));
        Assert.Equal(StudioDrying.From(clean).For(Usual, null), slipped.For(Usual, null));
    }

    [Fact]
    public void Pieces_that_dry_otherwise_from_some_day_on_are_seen_and_reckoned_with()
    {
        List<Lesson> before = [.. Enumerable.Repeat(Piece(7.5, 8.5), 24)];
        Assert.Null(StudioDrying.From(before).Change);

        var after = StudioDrying.From([.. before, .. Enumerable.Repeat(Piece(15, 17), 12)]);
        Assert.Equal(12, after.Change!.Pieces);
        Assert.InRange(after.Change.Factor, 1.5, 2.1);
        Assert.InRange(after.For(Usual, null).Mean, Math.Log(1.6), Math.Log(2.1));
    }

    private static StudioShift Taught(IEnumerable<Lesson> lessons) => StudioDrying.From([.. lessons]).For(Usual, null);

    private static Lesson Piece(double? notYet, double dry, double film = 2.5, string? room = null)
    {
        List<MakerWord> words = [new(TimeSpan.FromDays(dry), MakerSays.Dry)];
        if (notYet is { } days)
        {
            words.Add(new MakerWord(TimeSpan.FromDays(days), MakerSays.NotYet));
        }

        return new Lesson(new DryingPiece(Length.FromMillimetres(film), Mass.FromGrams(150)) { Words = words, Room = room });
    }
}
