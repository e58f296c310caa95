using Microsoft.Data.Sqlite;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.Tests.Recipes;

public sealed class BatchGelTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile studio = StudioFile.OpenInMemory();
    private readonly Member mira;

    public BatchGelTests() => mira = studio.Write(session =>
    {
        var member = session.Members.Add("Mira", Role.Steward, Now);
        var resin = session.Materials.Add(new NewMaterial("resin A", MaterialForm.ResinA));
        var recipe = session.Recipes.Add(
            "topcoat", [Part.Of(resin, new Amount.ByVolume(Volume.FromMillilitres(60)))]);
        session.Batches.Add(recipe, member, Now, Volume.FromMillilitres(60), session.Acts.Begin(new NewAct("mix", member, "mix", Now)));
        return member;
    });

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_comes_back_with_how_long_it_took_and_how_warm_it_was()
    {
        Gelled(TimeSpan.FromMinutes(24), 21);
        Gelled(TimeSpan.FromMinutes(30), null);

        var gels = studio.Read(view => view.Batches.Gels(10));
        Assert.Equal([24d, 30d], gels.Select(gel => gel.After.TotalMinutes));
        Assert.Equal((1, Now.AddMinutes(24), 21d), (gels[0].Batch, gels[0].At, gels[0].Warmth!.Value.Celsius));
        Assert.Null(gels[1].Warmth);
        Assert.Equal(30d, Assert.Single(studio.Read(view => view.Batches.Gels(1))).After.TotalMinutes);
        Assert.Equal([24d, 30d], studio.Read(view => view.Batches.GelsOf(1)).Select(gel => gel.After.TotalMinutes));
        Assert.Empty(studio.Read(view => view.Batches.GelsOf(2)));
    }

    [Fact]
    public void The_newest_of_each_recipe_come_back_so_that_none_crowds_out_another()
    {
        Gelled(TimeSpan.FromMinutes(24), 21);
        studio.Write(session =>
        {
            var act = session.Acts.Begin(new NewAct("mix", mira, "mix", Now.AddHours(1)));
            var recipe = session.Recipes.Add(
                "castcoat",
                [Part.Of(session.Materials.All()[0], new Amount.ByVolume(Volume.FromMillilitres(60)))]);
            session.Batches.Add(recipe, mira, Now.AddHours(1), Volume.FromMillilitres(60), act);
            session.Batches.Gelled(2, TimeSpan.FromMinutes(50), null, act);
            session.Batches.Gelled(2, TimeSpan.FromMinutes(55), null, act);
        });

        Assert.Equal([24d, 55d], studio.Read(view => view.Batches.Gels(1)).Select(gel => gel.After.TotalMinutes));
        Assert.Equal([50d, 55d], studio.Read(view => view.Batches.GelsOf(2)).Select(gel => gel.After.TotalMinutes));
    }

    [Fact]
    public void It_is_no_reading_of_a_cup_and_a_reading_is_no_gel()
    {
        Gelled(TimeSpan.FromMinutes(24), 21);
        studio.Write(session => session.Batches.Flowed(
            1, new FlowReading.OfTrace(new Trace(TimeSpan.FromSeconds(1.5)), null), session.Acts.Begin(new NewAct("batch", mira, "batch", Now))));

        Assert.IsType<FlowReading.OfTrace>(Assert.Single(studio.Read(view => view.Batches.Flows(10))).Reading);
        Assert.Single(studio.Read(view => view.Batches.Gels(10)));
    }

    [Fact]
    public void Undo_takes_it_back()
    {
        var act = Gelled(TimeSpan.FromMinutes(24), 21);

        studio.Write(session => Assert.IsType<Undone.Done>(session.Undo.Take(act.Id, new NewAct("undo", mira, "undo", Now.AddHours(1)))));

        Assert.Empty(studio.Read(view => view.Batches.Gels(10)));
    }

    [Fact]
    public void No_time_at_all_is_none() => Assert.Throws<SqliteException>(() => Gelled(TimeSpan.Zero, 21));

    private Act Gelled(TimeSpan after, double? celsius) => studio.Write(session =>
    {
        var act = session.Acts.Begin(new NewAct("gelled", mira, "batch 1 gelled", Now + after));
        session.Batches.Gelled(1, after, celsius is { } warm ? Temperature.FromCelsius(warm) : null, act);
        return act;
    });
}
