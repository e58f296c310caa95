using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.Tests.Recipes;

public sealed class RecipeRecordsTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile studio = StudioFile.OpenInMemory();
    private readonly Material white;
    private readonly Material mica;

    public RecipeRecordsTests() => (white, mica) = studio.Write(session => (
        session.Materials.Add(new NewMaterial("white", MaterialForm.Liquid)),
        session.Materials.Add(new NewMaterial("blue mica", MaterialForm.Powder))));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Its_parts_come_back_in_their_order_by_volume_and_by_mass()
    {
        Part[] parts =
        [
            Part.Of(mica, new Amount.ByMass(Mass.FromGrams(2.2))),
            Part.Of(white, new Amount.ByVolume(Volume.FromMillilitres(12.5))),
        ];

        studio.Write(session => session.Recipes.Add("reef", parts));

        var reef = Assert.Single(studio.Read(view => view.Recipes.All()));
        Assert.Equal(("reef", null), (reef.Name, reef.Makes));
        Assert.Equal(parts, reef.Parts);
    }

    [Fact]
    public void It_has_parts_and_none_of_nothing_or_twice_or_by_count()
    {
        var some = Part.Of(white, new Amount.ByVolume(Volume.FromMillilitres(10)));
        Refused<ArgumentException>();
        Refused<SqliteException>(some, some);
        Refused<SqliteException>(some with { Amount = new Amount.ByVolume(default) });
        Refused<SqliteException>(some with { Amount = new Amount.ByCount(3) });

        Assert.Empty(studio.Read(view => view.Recipes.All()));

        void Refused<T>(params Part[] parts)
            where T : Exception =>
            Assert.Throws<T>(() => studio.Write(session => session.Recipes.Add("reef", parts)));
    }

    [Fact]
    public void Every_batch_gets_the_next_number()
    {
        var (batches, acts) = studio.Write(session =>
        {
            var mira = session.Members.Add("Mira", Role.Steward, Morning);
            var reef = session.Recipes.Add("reef", [Part.Of(white, new Amount.ByVolume(Volume.FromMillilitres(10)))]);
            var mixed = new[] { session.Said("mix", mira), session.Said("mix", mira) };
            return (
                mixed.Zip([400, 800], (act, ml) =>
                    session.Batches.Add(reef, mira, Morning, Volume.FromMillilitres(ml), act)).ToList(),
                mixed);
        });

        Assert.Equal([1, 2], batches.Select(batch => batch.Number));
        var second = studio.Read(view => view.Batches.Find(2));
        Assert.Equal(
            new Batch(2, "reef", "Mira", Morning, Volume.FromMillilitres(800)) { ActId = acts[1].Id }, second);
        Assert.Equal(batches, studio.Read(view => view.Batches.All()));
        Assert.Null(studio.Read(view => view.Batches.Find(999999)));
    }
}
