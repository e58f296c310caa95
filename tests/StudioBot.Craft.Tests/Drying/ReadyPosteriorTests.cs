using CsCheck;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class ReadyPosteriorTests
{
    private static readonly DryingPiece Usual = new(Length.FromMillimetres(2.5), Mass.FromGrams(150));

    [Fact]
    public void An_untouched_piece_lies_where_common_practice_has_it()
    {
        // 8 equivalent days, 80 % between 3.9 and 16.6 (common practice).
        var posterior = Of(Usual);

        Assert.Equal(3.9, posterior.Quantile(0.1).TotalDays, 0.06);
        Assert.Equal(8.0, posterior.Quantile(0.5).TotalDays, 0.02);
        Assert.Equal(16.6, posterior.Quantile(0.9).TotalDays, 0.06);
    }

    [Fact]
    public void Raw_wood_takes_a_quarter_longer() =>
        // Common practice: 1.25 times.
        Assert.Equal(10, Of(Usual with { Ground = Ground.Thirsty }).Quantile(0.5).TotalDays, 0.02);

    [Fact]
    public void Probability_is_the_quantile_read_backwards() =>
        Gen.Double[0.01, 0.99].Sample(share =>
        {
            var posterior = Of(Usual);
            return Math.Abs(posterior.ProbabilityAt(posterior.Quantile(share)) - share) < 1e-6;
        });

    [Fact]
    public void Not_yet_never_brings_the_day_nearer() =>
        Gen.Select(Gen.Double[0.5, 40], Gen.Double[0.05, 0.95]).Sample((day, share) =>
            Of(Usual with { Words = [Word(day, MakerSays.NotYet)] }).Quantile(share) >= Of(Usual).Quantile(share));

    [Fact]
    public void Dry_never_puts_the_day_off() =>
        Gen.Select(Gen.Double[0.5, 40], Gen.Double[0.05, 0.95]).Sample((day, share) =>
            Of(Usual with { Words = [Word(day, MakerSays.Dry)] }).Quantile(share) <= Of(Usual).Quantile(share));

    [Fact]
    public void Weighings_that_still_fall_fast_put_the_day_off_and_flat_ones_bring_it_nearer()
    {
        var falling = Weighed((3, 640), (5, 628), (8, 614), (12, 600));
        var flat = Weighed((3, 616.2), (5, 615.4), (8, 615.1), (12, 615.0));

        Assert.True(falling.Quantile(0.5) > Of(Usual).Quantile(0.5));
        Assert.True(flat.ProbabilityAt(TimeSpan.FromDays(12)) > 0.9);
        Assert.True(falling.ProbabilityAt(TimeSpan.FromDays(12)) < 0.1);
    }

    [Fact]
    public void The_panels_own_mass_cancels()
    {
        var light = Weighed((3, 40.4), (5, 28.9), (8, 21.3));
        var heavy = Weighed((3, 5040.4), (5, 5028.9), (8, 5021.3));

        Assert.Equal(light.Quantile(0.5).TotalDays, heavy.Quantile(0.5).TotalDays, 6);
    }

    [Fact]
    public void Nothing_gets_ready_in_a_room_that_stands_still() => Assert.Throws<ArgumentOutOfRangeException>(
        () => Of(Usual).Left(0.5, TimeSpan.Zero, new RoomPace(0, PaceGrounds.LastWeek)));

    private static ReadyPosterior Weighed(params (double Day, double Grams)[] weighings) => Of(Usual with
    {
        Deviation = Mass.FromGrams(0.1),
        Weighings = [.. weighings.Select(one => new Weighing(TimeSpan.FromDays(one.Day), Mass.FromGrams(one.Grams)))],
    });

    private static ReadyPosterior Of(DryingPiece piece) => new(piece, StudioShift.Untaught);

    private static MakerWord Word(double day, MakerSays says) => new(TimeSpan.FromDays(day), says);
}
