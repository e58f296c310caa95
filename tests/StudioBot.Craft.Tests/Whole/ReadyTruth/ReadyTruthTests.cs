using System.Globalization;
using Xunit.Abstractions;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>
/// The ready day judged on pieces that dry by physics it knows nothing of. What is expected comes from an earlier,
/// separate simulation of that physics (3 × 150 studios of eight pieces); none of it was taken from this code. The
/// physics: Kiil 2006 and common practice, its constants of our making; see <see cref="TrueFilm"/>.
/// </summary>
public sealed class ReadyTruthTests(ReadyTruthRun run, ITestOutputHelper output) : IClassFixture<ReadyTruthRun>
{
    private const int PiecesBefore = 3600;          // of the earlier simulation

    [Fact]
    public void The_simulated_pieces_take_the_days_that_pieces_take()
    {
        Say($"{run.AtPour.Pieces} pieces, seed {run.Seed} (STUDIOBOT_SEED repeats it)");
        Say($"true day: {Ready(0.1):0.0} (10 %), {Ready(0.5):0.0} (middle), {Ready(0.9):0.0} (90 %)");

        Assert.True(run.AtPour.Pieces >= 2000);
        // Common practice: one to three weeks, thin skims days, thick and cold work four; earlier simulation 4, 10, 23.
        Assert.InRange(Ready(0.1), 3, 5);
        Assert.InRange(Ready(0.5), 8.5, 11.5);
        Assert.InRange(Ready(0.9), 20, 27);
    }

    [Fact]
    public void A_seed_makes_the_same_pieces_again_and_another_makes_others()
    {
        static double[] Days(int seed) => [.. new TrueStudio(seed, 5).Poured.Select(piece => piece.Ready)];

        Assert.Equal(Days(1), Days(1));
        Assert.NotEqual(Days(1), Days(2));
    }

    [Fact]
    public void On_the_day_of_the_pour_the_interval_holds_about_eight_true_days_of_ten()
    {
        var look = run.AtPour;
        Say($"pour: holds {look.Holds:0.0} %, in whole days {look.HoldsInWholeDays:0.0} %");
        Say($"pour: the middle is off by {look.Error:0.0} days (median)");

        Assert.InRange(look.Holds, 75, 90);
    }

    [Theory]
    [InlineData("ping at 0.70 + hand check")]
    [InlineData("weighings alone, 0.80")]
    [InlineData("weighings alone, 0.90")]
    [InlineData("weighings + check, 0.70")]
    [InlineData("weighings + check, 0.80")]
    public void At_the_ping_the_interval_holds_about_eight_true_days_of_ten(string policy)
    {
        var score = run.Of(Policy.Called(policy));
        var held = score.HeldAtPing;
        Say($"{policy}: at the first ping the interval holds {held:0.0} %");
        Say($"{policy}: a rise held back {score.HeldBack:0.0} %, at most {score.LongestHeldBack} evenings");

        Assert.InRange(held, 75, 90);
    }

    [Fact]
    public void Six_weighings_narrow_the_interval_to_less_than_half()
    {
        Say($"pour: {run.AtPour.Width:0.0} days wide, holds {run.AtPour.Holds:0.0} %");
        SayWeighed("three", run.AfterThree, 8);
        SayWeighed("six", run.AfterSix, 21);

        Assert.True(run.AfterSix.Width <= run.AtPour.Width / 2);
    }

    [Fact]
    public void What_asks_the_estimate_is_less_often_too_early_than_three_weeks_and_waits_less()
    {
        Say($"{"policy",-28}{"early %",10}{"> 15 %",9}{"in vain",9}{"looks",7}");
        foreach (var policy in Policy.All)
        {
            var (name, score) = (policy.Name, run.Of(policy));
            var (early, far) = (score.TooEarly.Percent, score.FarTooEarly.Percent);
            Say($"{name,-28}{early,10:0.0}{far,9:0.0}{score.InVain,9:0.0}{score.Looks,7:0.0}");
        }

        var threeWeeks = run.Of(Policy.Called("always 21"));
        Assert.All(Policy.All.Where(policy => policy.Odds is not null).Select(run.Of), score =>
        {
            Assert.True(score.TooEarly.Percent < threeWeeks.TooEarly.Percent / 1.5);
            Assert.True(score.FarTooEarly.Percent < threeWeeks.FarTooEarly.Percent / 1.5);
            Assert.True(score.InVain < threeWeeks.InVain / 1.5);
        });
    }

    // Over two runs of 9,600 pieces three figures lay about a third off or more. Far too early there are fewer: 0.6 to
    // 0.7 % for the ping, 1.7 to 1.8 % for weighings alone at 0.80; likely because these walks ask and coat on evenings
    // only, which would also be why each that asks waits 0.3 to 0.6 days longer. Weighings + check at 0.80 is too early
    // in 1.4 to 1.6 %, not 1.1 %: 0.2 less where the dry film takes up no water; for the rest no reason was found.
    [Theory]
    // Earlier simulation: too early %, more than 15 % before the truth %, mean days in vain.
    [InlineData("always 14", 28, 22, 4.2)]
    [InlineData("always 21", 12, 7.6, 9.8)]
    [InlineData("hand check from day 14", 10, 2.2, 4.7)]
    [InlineData("ping at 0.70 + hand check", 4.1, 1.1, 5.1)]
    [InlineData("weighings alone, 0.80", 5.1, 2.8, 4.3)]
    [InlineData("weighings alone, 0.90", 1.9, 0.7, 5.9)]
    [InlineData("weighings + check, 0.70", 3.2, 0.4, 3.7)]
    [InlineData("weighings + check, 0.80", 1.1, 0.2, 4.6)]
    public void A_policy_fares_as_in_an_earlier_simulation(string policy, double early, double far, double inVain)
    {
        var score = run.Of(Policy.Called(policy));

        NearShare(early, score.TooEarly);
        NearShare(far, score.FarTooEarly, mayBeLess: Policy.Called(policy).Odds is not null);
        Assert.InRange(score.InVain, inVain * 2 / 3, inVain * 4 / 3);
    }

    [Theory]
    [InlineData("hand check from day 14", 2.4)]     // earlier simulation
    [InlineData("ping at 0.70 + hand check", 1.4)]  // earlier simulation
    public void A_piece_is_felt_about_as_often_as_in_an_earlier_simulation(string policy, double looks) =>
        Assert.InRange(run.Of(Policy.Called(policy)).Looks, looks * 2 / 3, looks * 4 / 3);

    // Within a third; where so few pieces make a share that chance alone is more, within two of its deviations.
    private void NearShare(double expected, Share measured, bool mayBeLess = false)
    {
        var chance = measured.Chance * Math.Sqrt(1 + (double)run.AtPour.Pieces / PiecesBefore);
        var off = Math.Max(expected / 3, 2 * chance);
        Assert.InRange(measured.Percent, mayBeLess ? 0 : expected - off, expected + off);
    }

    private double Ready(double share) => run.AtPour.Ready(share);

    private void SayWeighed(string times, LookScore look, int day)
    {
        Say($"{times} weighings: {look.Width:0.0} days wide, holds {look.Holds:0.0} %");
        Say($"{times} weighings, still wet on day {day}: holds {look.HoldsIfStillWet(day):0.0} %");
    }

    private void Say(FormattableString line)
    {
        var text = line.ToString(CultureInfo.InvariantCulture);
        output.WriteLine(text);
        Console.WriteLine(text);
    }
}
