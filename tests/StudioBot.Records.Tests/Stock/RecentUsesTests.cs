using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Stock;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Stock;

/// <summary>What is remembered of uses, over many sessions, against what was told.</summary>
public sealed class RecentUsesTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;
    private readonly Material white;
    private readonly Material black;

    public RecentUsesTests() => (mira, white, black) = studio.File.Write(session =>
    {
        var member = session.Members.Add("Mira", Role.Steward, Morning);
        var (one, other) = (Named(session, "white"), Named(session, "black"));
        var act = session.Said("bought", member);
        session.Stock.Enter(new NewLot(one, Ml(1000), Morning), StockReason.Bought, act);
        session.Stock.Enter(new NewLot(other, Ml(1000), Morning), StockReason.Bought, act);
        return (member, one, other);
    });

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Each_use_counts_from_the_session_after_it_on()
    {
        Assert.Empty(Uses(white));

        Use(white, 20, minute: 1);
        Use(black, 7, minute: 2);
        Use(white, 30, minute: 3);

        Assert.Equal([20, 30], Uses(white));
        Assert.Equal([7], Uses(black));
    }

    [Fact]
    public void What_was_undone_does_not_count_whether_it_was_looked_at_before_or_not()
    {
        var first = Use(white, 20, minute: 1);
        Assert.Equal([20], Uses(white));
        Use(white, 30, minute: 2);
        var third = Use(white, 40, minute: 3);

        studio.File.Write(session => session.TakeBack(first));
        studio.File.Write(session => session.TakeBack(third));

        Assert.Equal([30], Uses(white));
    }

    [Fact]
    public void What_went_with_its_session_does_not_count()
    {
        Use(white, 20, minute: 1);
        Assert.Equal([20], Uses(white));

        Assert.Throws<DivideByZeroException>(() => studio.File.Write(session =>
        {
            session.Stock.Draw(white, Ml(50), StockReason.Used, session.Said("used", mira, minute: 2));
            Assert.Equal([20, 50], Uses(session, white, Morning));
            throw new DivideByZeroException();
        }));

        Assert.Equal([20], Uses(white));
        Use(white, 60, minute: 3);
        Assert.Equal([20, 60], Uses(white));
    }

    [Fact]
    public void What_comes_back_counts_against_and_what_is_bought_or_binned_does_not_count()
    {
        Assert.Empty(Uses(white));

        studio.File.Write(session =>
        {
            var act = session.Said("used", mira, minute: 1);
            session.Stock.Draw(white, Ml(100), StockReason.Used, act);
            session.Stock.Draw(white, Ml(10), StockReason.Binned, act);
            session.Stock.AddTo(session.Lots.Of(white.Id)[0].Id, white, Ml(15), StockReason.Returned, act);
        });

        Assert.Equal([-15, 100], Uses(white));
    }

    [Fact]
    public void Who_asks_from_another_moment_on_is_told_of_that()
    {
        Use(white, 20, minute: 1);
        Use(white, 30, minute: 5);

        Assert.Equal([30], Uses(white, Morning.AddMinutes(3)));
        Assert.Equal([20, 30], Uses(white, Morning));
        Assert.Equal([30], Uses(white, Morning.AddMinutes(5)));
        Assert.Empty(Uses(white, Morning.AddDays(60)));
        Assert.Equal([20, 30], Uses(white, Morning));
    }

    // What is remembered over sessions, and what a look that remembers nothing reads: the same of every material.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Many_uses_and_undos_come_to_the_same_as_reading_all_anew(int seed)
    {
        var chance = new Random(seed);
        List<Act> acts = [];
        for (var step = 1; step <= 60; step++)
        {
            if (acts.Count > 0 && chance.Next(4) == 0)
            {
                var one = acts[chance.Next(acts.Count)];
                acts.Remove(one);
                studio.File.Write(session => session.TakeBack(one));
            }
            else
            {
                acts.Add(Use(chance.Next(2) == 0 ? white : black, chance.Next(1, 9), step));
            }

            foreach (var material in new[] { white, black })
            {
                var since = Morning.AddMinutes(chance.Next(step));
                Assert.Equal(studio.File.Read(view => Uses(view, material, since)), Uses(material, since));
            }
        }
    }

    private static Material Named(StudioSession session, string name) =>
        session.Materials.Add(new NewMaterial(name, MaterialForm.Liquid));

    private Act Use(Material material, double millilitres, double minute) => studio.File.Write(session =>
    {
        var act = session.Said("used", mira, minute: minute);
        Assert.IsType<Drawn.Taken>(session.Stock.Draw(material, Ml(millilitres), StockReason.Used, act));
        return act;
    });

    private List<double> Uses(Material material, DateTimeOffset? since = null) =>
        studio.File.Write(session => Uses(session, material, since ?? Morning));

    // By size: in which order they are told is left open.
    private static List<double> Uses(StudioView view, Material material, DateTimeOffset since) =>
    [
        .. view.Stock.UsesSince(since, material.Id, new Lazy<long>(() => view.Acts.FirstWrittenSince(since)))
            .Select(use => use.Units).Order(),
    ];
}
