using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Records.Tests.Materials;

public sealed class MaterialRecordsTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    private static readonly Amount Millilitre = new Amount.ByVolume(Volume.FromMillilitres(1));
    private static readonly Amount Gram = new Amount.ByMass(Mass.FromGrams(1));
    private static readonly Amount One = new Amount.ByCount(1);

    private readonly StudioFile studio = StudioFile.OpenInMemory();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_is_known_of_a_material_comes_back()
    {
        var pearl = new NewMaterial("pearl powder", MaterialForm.Powder)
        {
            Density = Density.FromGramsPerMillilitre(2.8),
            GramsPerTeaspoon = Mass.FromGrams(2.2),
            SolidsShare = 1,
            Low = new Amount.ByMass(Mass.FromGrams(20)),
            Packs =
            [
                new Pack(new Amount.ByMass(Mass.FromGrams(50)), Money.From(18)),
                new Pack(new Amount.ByMass(Mass.FromGrams(10)), null),
            ],
        };

        studio.Write(session => session.Materials.Add(pearl));

        var kept = Assert.Single(studio.Read(view => view.Materials.All()));
        Assert.Equal(("pearl powder", MaterialForm.Powder), (kept.Name, kept.Form));
        Assert.Equal((pearl.Density, pearl.GramsPerTeaspoon), (kept.Density, kept.GramsPerTeaspoon));
        Assert.Equal(1.0, kept.SolidsShare);
        Assert.Equal(pearl.Low, kept.Low);
        Assert.Equal([pearl.Packs[1], pearl.Packs[0]], kept.Packs);   // the smallest first
    }

    [Theory]
    [InlineData(MaterialForm.Liquid, 0)]
    [InlineData(MaterialForm.Mixture, 0)]
    [InlineData(MaterialForm.ResinA, 0)]
    [InlineData(MaterialForm.HardenerB, 0)]
    [InlineData(MaterialForm.Powder, 1)]
    [InlineData(MaterialForm.Counted, 2)]
    public void Each_form_is_measured_in_its_own_way_and_in_no_other(MaterialForm form, int right)
    {
        Amount[] measures = [Millilitre, Gram, One];
        var material = studio.Write(session => session.Materials.Add(new NewMaterial("stuff", form)));

        for (var measure = 0; measure < measures.Length; measure++)
        {
            var bought = measures[measure];
            void Buy() => studio.Write(session => Came(session, material, null, bought));
            if (measure == right)
            {
                Buy();
            }
            else
            {
                Assert.Throws<ArgumentException>(Buy);
            }
        }

        Assert.Equal(measures[right], Assert.Single(studio.Read(view => view.Materials.Levels())).Left);
    }

    [Fact]
    public void What_was_never_bought_has_a_level_of_nothing()
    {
        studio.Write(session => session.Materials.Add(new NewMaterial("white", MaterialForm.Liquid)));

        Assert.Equal(
            new Amount.ByVolume(Volume.FromMillilitres(0)),
            Assert.Single(studio.Read(view => view.Materials.Levels())).Left);
    }

    [Fact]
    public void A_name_is_taken_whatever_its_capitals()
    {
        studio.Write(session => session.Materials.Add(new NewMaterial("white", MaterialForm.Liquid)));

        Assert.Throws<SqliteException>(
            () => studio.Write(session => session.Materials.Add(new NewMaterial("White", MaterialForm.Liquid))));
    }

    [Fact]
    public void The_two_parts_of_a_kit_share_a_label_but_no_material_has_one_twice()
    {
        var (a, b) = studio.Write(session => (
            session.Materials.Add(new NewMaterial("resin A", MaterialForm.ResinA)),
            session.Materials.Add(new NewMaterial("hardener B", MaterialForm.HardenerB))));

        studio.Write(session => Came(session, a, "R-3", Millilitre));
        studio.Write(session => Came(session, b, "R-3", Millilitre));
        Assert.Throws<SqliteException>(
            () => studio.Write(session => Came(session, a, "r-3", Millilitre)));

        Assert.Equal([a.Id, b.Id], studio.Read(view => view.Lots.All()).Select(lot => lot.MaterialId));
    }

    private static long Came(StudioSession session, Material material, string? label, Amount bought) =>
        session.Stock.Enter(
            new NewLot(material, bought, Morning) { Label = label }, StockReason.Bought, session.Said("bought"));
}
