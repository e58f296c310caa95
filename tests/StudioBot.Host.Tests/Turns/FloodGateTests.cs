using StudioBot.Host.Turns;

namespace StudioBot.Host.Tests.Turns;

public sealed class FloodGateTests
{
    private const long Pia = 8;

    private static readonly DateTimeOffset Start = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly FloodGate gate = new();
    private long rows;

    [Fact]
    public void Twenty_at_once_then_one_in_three_seconds()
    {
        // One a second for a minute after the twenty: every third of them.
        Assert.Equal(20, Passed(20, 0));
        Assert.Equal(20, Enumerable.Range(1, 60).Count(second => Pass(second).IsFree));
    }

    [Fact]
    public void The_first_over_it_says_how_long_and_the_others_nothing_until_it_was_calm()
    {
        Passed(20, 0);
        Assert.Equal(new Passage(false, TimeSpan.FromSeconds(3)), Pass(0));
        Assert.Equal(new Passage(false, TimeSpan.FromSeconds(2)) with { Told = null }, Pass(1));
        Assert.True(Pass(3).IsFree);
        Assert.Equal(new Passage(false, null), Pass(3));

        // Calm is when twenty may come at once again: a minute later.
        Assert.Equal(20, Passed(20, 63));
        Assert.NotNull(Pass(63).Told);
    }

    [Fact]
    public void Asked_again_about_the_same_row_it_answers_the_same_and_counts_nothing()
    {
        for (var tries = 0; tries < 50; tries++)
        {
            Assert.True(gate.Pass(Pia, isPress: false, row: 1007, Start).IsFree);
        }

        Assert.Equal(19, Passed(30, 0));
    }

    [Fact]
    public void A_whole_commit_that_is_tried_again_costs_nobody_anything()
    {
        bool[] Tried() => [.. Enumerable.Range(2000, 50).Select(row => gate.Pass(Pia, isPress: false, row, Start).IsFree)];
        var first = Tried();
        Assert.Equal(20, first.Count(isFree => isFree));
        Assert.Equal(first, Tried());
    }

    [Fact]
    public void What_was_typed_over_hours_and_comes_at_once_is_no_flood() =>
        Assert.All(Enumerable.Range(0, 500), message => Assert.True(Pass(message * 3).IsFree));

    [Fact]
    public void A_moment_that_lies_before_the_last_one_costs_nobody_anything()
    {
        Assert.True(Pass(3600).IsFree);
        Assert.Equal(19, Passed(30, 0));
        Assert.True(Pass(3603).IsFree);
    }

    [Fact]
    public void Each_account_counts_for_itself_and_presses_apart()
    {
        Passed(30, 0);
        Assert.True(gate.Pass(Pia + 1, isPress: false, ++rows, Start).IsFree);
        Assert.True(gate.Pass(Pia, isPress: true, ++rows, Start).IsFree);
    }

    [Fact]
    public void Ten_thousand_accounts_take_nobody_s_place()
    {
        Passed(20, 0);
        for (var account = 1000; account < 11_000; account++)
        {
            gate.Pass(account, isPress: false, ++rows, Start.AddSeconds(1));
        }

        Assert.False(Pass(1).IsFree);
    }

    private Passage Pass(double second) => gate.Pass(Pia, isPress: false, ++rows, Start.AddSeconds(second));

    private int Passed(int messages, double second) =>
        Enumerable.Range(0, messages).Count(_ => Pass(second).IsFree);
}
