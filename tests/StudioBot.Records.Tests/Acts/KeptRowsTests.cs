using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.House;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;
using StudioBot.Records.Sample;
using StudioBot.Records.Stock;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Acts;

/// <summary>Rows that are no book go back to what they were.</summary>
public sealed class KeptRowsTests : IDisposable
{
    private readonly TemporaryStudio studio = new();

    public KeptRowsTests() => studio.File.Write(SampleStudio.WriteInto);

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_the_studio_set_is_as_it_was()
    {
        var before = studio.File.Read(view => view.Studio.Settings())!;
        var act = Did((session, act) =>
        {
            session.Studio.Change(before with { Units = UnitSystem.Us, Scoop = Volume.FromMillilitres(25) }, act);
            session.Studio.Set("week day", "sunday", act);
            session.Studio.Override(new TechniqueOverride("bloom", Length.FromMillimetres(2.1), 0.18), act);
        });
        Assert.Equal("sunday", studio.File.Read(view => view.Studio.Setting("week day")));
        Assert.Single(studio.File.Read(view => view.Studio.TechniqueOverrides()));

        Assert.IsType<Undone.Done>(Undo(act));

        Assert.Equal(before, studio.File.Read(view => view.Studio.Settings()));
        Assert.Null(studio.File.Read(view => view.Studio.Setting("week day")));
        Assert.Empty(studio.File.Read(view => view.Studio.TechniqueOverrides()));
    }

    [Fact]
    public void A_materials_figures_and_packs_are_as_they_were_to_the_last_digit()
    {
        var white = Named("white");
        var act = Did((session, act) => session.Materials.Change(
            white with
            {
                Density = Density.FromGramsPerMillilitre(1.3000000000000003),
                SolidsShare = null,
                Low = Ml(50),
                Packs = [new Pack(Ml(750), Money.From(14))],
                Bottle = Mass.FromGrams(61.5),
                ShelfLife = TimeSpan.FromDays(365),
                LeadTime = TimeSpan.FromDays(10),
            },
            act));
        var changed = Named("white");
        Assert.Equal((Mass.FromGrams(61.5), TimeSpan.FromDays(365)), (changed.Bottle, changed.ShelfLife));
        Assert.Equal(TimeSpan.FromDays(10), changed.LeadTime);
        Assert.Single(changed.Packs);

        Assert.IsType<Undone.Done>(Undo(act));

        var again = Named("white");
        Assert.Equal(white with { Packs = [] }, again with { Packs = [] }, Alike);
        Assert.Equal(white.Packs, again.Packs);
    }

    [Fact]
    public void A_material_that_nobody_touched_goes_with_the_act_that_named_it()
    {
        var act = Did((session, act) => session.Materials.Add(
            new NewMaterial("pearl", MaterialForm.Liquid) { Packs = [new Pack(Ml(100), null)] }, act));

        Assert.IsType<Undone.Done>(Undo(act));

        Assert.DoesNotContain(studio.File.Read(view => view.Materials.All()), one => one.Name == "pearl");
    }

    [Fact]
    public void A_material_that_a_book_mentions_stays_and_nothing_else_of_the_act_goes()
    {
        var act = Did((session, act) =>
        {
            session.Studio.Set("week day", "sunday", act);
            session.Materials.Add(new NewMaterial("pearl", MaterialForm.Liquid), act);
            session.Studio.Set("wall", "on", act);
        });
        var bought = Did((session, act) =>
            session.Stock.Enter(new NewLot(Named(session, "pearl"), Ml(100), Morning), StockReason.Bought, act));

        Assert.Equal([bought], Assert.IsType<Undone.RestsOn>(Undo(act)).Later);

        Assert.Equal(("sunday", "on"), studio.File.Read(view =>
            (view.Studio.Setting("week day"), view.Studio.Setting("wall"))));
        Assert.True(studio.File.Read(view => view.Acts.Find(act.Id))!.Holds);
    }

    [Fact]
    public void A_recipes_parts_are_as_they_were_and_a_new_recipe_is_gone()
    {
        var ocean = Recipe("ocean")!;
        var act = Did((session, act) =>
        {
            session.Recipes.Change(ocean, [Part.Of(Named(session, "white"), Ml(10))], act);
            session.Recipes.Add("reef", [Part.Of(Named(session, "magenta"), Ml(10))], act: act);
        });
        Assert.Single(Recipe("ocean")!.Parts);
        Assert.NotNull(Recipe("reef"));

        Assert.IsType<Undone.Done>(Undo(act));

        Assert.Equal(ocean.Parts, Recipe("ocean")!.Parts);
        Assert.Null(Recipe("reef"));
    }

    [Fact]
    public void A_shelf_stands_where_it_stood_and_a_new_one_is_gone()
    {
        var act = Did((session, act) =>
        {
            var cellar = session.Rooms.Add("cellar", act);
            session.Rooms.Move(session.Rooms.Shelves().Single(shelf => shelf.Label == "A1"), cellar, act);
            session.Rooms.AddShelf("D1", cellar, act);
        });
        Assert.Equal("cellar", studio.File.Read(view => view.Rooms.Shelves())[0].Room);

        Assert.IsType<Undone.Done>(Undo(act));

        Assert.Equal("studio", studio.File.Read(view => view.Rooms.Shelves())[0].Room);
        Assert.Equal(12, studio.File.Read(view => view.Rooms.Shelves()).Count);
        Assert.Equal(2, studio.File.Read(view => view.Rooms.All()).Count);
    }

    // Lists are the same when their parts are, and these have none.
    private static bool Alike(Material one, Material other) => $"{one}" == $"{other}";

    private static Material Named(StudioView view, string name) => view.Materials.All().Single(one => one.Name == name);

    private Material Named(string name) => studio.File.Read(view => Named(view, name));

    private Recipe? Recipe(string name) =>
        studio.File.Read(view => view.Recipes.All()).SingleOrDefault(recipe => recipe.Name == name);

    private Act Did(Action<StudioSession, Act> what) => studio.File.Write(session =>
    {
        var act = session.Said("studio", session.Members.All()[0]);
        what(session, act);
        return act;
    });

    private Undone Undo(Act act) => studio.File.Write(session => session.TakeBack(act));
}
