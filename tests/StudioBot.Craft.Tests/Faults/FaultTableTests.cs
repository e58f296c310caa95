using StudioBot.Craft.Faults;

namespace StudioBot.Craft.Tests.Faults;

public sealed class FaultTableTests
{
    /// <summary>The lady tasting tea: eight cups, four of each kind, three of four told right is 17 of 70 by chance, all four 1 of 70
    /// (R. A. Fisher, The Design of Experiments, 1935, chapter 2; from memory).</summary>
    [Theory]
    [InlineData(3, 1, 1, 3, 17.0 / 70)]
    [InlineData(4, 0, 0, 4, 1.0 / 70)]
    [InlineData(0, 4, 4, 0, 1)]
    public void The_lady_tasting_tea(int a, int b, int c, int d, double chance) =>
        Assert.Equal(chance, new FaultTable(a, b, c, d).ByChance, 12);

    /// <summary>Criminal convictions among twins, 10 of 13 against 2 of 17: 0.00046518 (R. A. Fisher, as in the reference page of a
    /// statistics language's fisher.test; from memory).</summary>
    [Fact]
    public void Convictions_of_twins() =>
        Assert.Equal(0.00046518, new FaultTable(10, 3, 2, 15).ByChance, 8);

    [Fact]
    public void Where_nothing_was_seen_chance_explains_all() => Assert.Equal(1, new FaultTable(0, 0, 0, 0).ByChance);

    /// <summary>Holm 1979 on 0.01, 0.04, 0.03 and 0.005: 0.03, 0.06, 0.06 and 0.02 (a worked example of multiple-testing lessons;
    /// from memory, and by hand: 4 · 0.005, 3 · 0.01, 2 · 0.03, then no less).</summary>
    [Fact]
    public void Many_looks_are_corrected_for()
    {
        var corrected = ManyLooks.Corrected([0.01, 0.04, 0.03, 0.005]);
        Assert.Equal([0.03, 0.06, 0.06, 0.02], corrected.Select(one => Math.Round(one, 12)));
    }

    [Fact]
    public void Of_a_hundred_looks_at_chance_alone_hardly_any_is_called_a_finding()
    {
        const int seed = 20261128;
        var random = new Random(seed);
        var found = 0;
        for (var studio = 0; studio < 500; studio++)
        {
            var chances = Enumerable.Range(0, 20).Select(_ =>
            {
                var pieces = Enumerable.Range(0, 40).Select(_ => (Faulty: random.Next(5) == 0, With: random.Next(4) == 0)).ToList();
                return new FaultTable(
                    pieces.Count(one => one is (true, true)),
                    pieces.Count(one => one is (false, true)),
                    pieces.Count(one => one is (true, false)),
                    pieces.Count(one => one is (false, false))).ByChance;
            }).ToList();
            found += ManyLooks.Corrected(chances).Any(chance => chance < 0.05) ? 1 : 0;
        }

        Assert.InRange(found / 500.0, 0, 0.05);     // seed 20261128
    }
}
