using StudioBot.Craft.Costs;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using StudioBot.Records.Sample;

namespace StudioBot.Records.Tests.Sample;

public sealed class SampleStudioTests : IDisposable
{
    private readonly StudioFile studio = StudioFile.OpenInMemory();

    public SampleStudioTests() => studio.Write(SampleStudio.WriteInto);

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_answers_in_metric_units_and_euro_by_the_clock_of_Vienna()
    {
        var settings = studio.Read(view => view.Studio.Settings());

        Assert.NotNull(settings);
        Assert.Equal((UnitSystem.Metric, "EUR", "Europe/Vienna"), (settings.Units, settings.Currency, settings.Zone));
        Assert.Equal(Volume.FromMillilitres(20), settings.Scoop);
    }

    [Fact]
    public void Mira_keeps_house_for_three_others()
    {
        var members = studio.Read(view => view.Members.All());

        Assert.Equal(["Mira", "Pia", "Tomas", "Jonas"], members.Select(member => member.Name));
        Assert.Equal("Mira", Assert.Single(members, member => member.Role == Role.Steward).Name);
    }

    [Theory]
    [InlineData("white", MaterialForm.Liquid)]
    [InlineData("lamp black", MaterialForm.Liquid)]
    [InlineData("ultramarine", MaterialForm.Liquid)]
    [InlineData("magenta", MaterialForm.Liquid)]
    [InlineData("ochre", MaterialForm.Liquid)]
    [InlineData("blue mica", MaterialForm.Powder)]
    [InlineData("gold mica", MaterialForm.Powder)]
    [InlineData("silver mica", MaterialForm.Powder)]
    [InlineData("copper mica", MaterialForm.Powder)]
    [InlineData("neutral base", MaterialForm.Liquid)]
    [InlineData("gloss varnish", MaterialForm.Liquid)]
    [InlineData("flow extender", MaterialForm.Liquid)]
    [InlineData("thinner", MaterialForm.Liquid)]
    [InlineData("isopropyl", MaterialForm.Liquid)]
    [InlineData("wall paint", MaterialForm.Liquid)]
    [InlineData("resin A", MaterialForm.ResinA)]
    [InlineData("hardener B", MaterialForm.HardenerB)]
    [InlineData("tile 10cm", MaterialForm.Counted)]
    [InlineData("cup", MaterialForm.Counted)]
    [InlineData("glove", MaterialForm.Counted)]
    [InlineData("medium", MaterialForm.Mixture)]
    [InlineData("activator", MaterialForm.Mixture)]
    public void It_works_with(string name, MaterialForm form)
    {
        var material = studio.Read(view => view.Materials.All()).Single(one => one.Name == name);

        Assert.Equal(form, material.Form);
    }

    [Fact]
    public void Every_liquid_has_a_density_and_every_powder_a_spoon()
    {
        foreach (var material in studio.Read(view => view.Materials.All()))
        {
            Assert.Equal(material.Form != MaterialForm.Counted, material.Density is not null);
            Assert.Equal(material.Form == MaterialForm.Powder, material.GramsPerTeaspoon is not null);
        }
    }

    [Fact]
    public void Medium_is_three_of_neutral_base_to_one_of_gloss_varnish()   // common practice
    {
        var medium = studio.Read(view => view.Recipes.All()).Single(recipe => recipe.Name == "medium");

        Assert.Equal(["neutral base", "gloss varnish"], medium.Parts.Select(part => part.Material));
        var volumes = medium.Parts.Select(part => ((Amount.ByVolume)part.Amount).Volume).ToList();
        Assert.Equal(3, volumes[0] / volumes[1], 12);
        Assert.Equal("medium", medium.Makes);
    }

    [Fact]
    public void Its_recipes_are_four()
    {
        var recipes = studio.Read(view => view.Recipes.All());

        Assert.Equal(["activator", "dusk", "medium", "ocean"], recipes.Select(recipe => recipe.Name));
    }

    [Theory]
    [InlineData("H-12", "hardener B", 32.00)]
    [InlineData("R-3", "resin A", 58.00)]
    [InlineData("M-7", "medium", null)]
    [InlineData("W-2", "white", 17.50)]
    public void Its_lots_are_labelled_and_priced(string label, string material, double? price)
    {
        var (lot, of) = studio.Read(view =>
        {
            var found = view.Lots.All().Single(one => one.Label == label);
            return (found, view.Materials.All().Single(one => one.Id == found.MaterialId));
        });

        Assert.Equal(material, of.Name);
        Assert.Equal(price is { } sum ? Money.From((decimal)sum) : null, lot.Price);
    }

    [Fact]
    public void A_level_is_what_its_lots_have_left()
    {
        var (levels, materials, lots) = studio.Read(view =>
            (view.Materials.Levels(), view.Materials.All(), view.Lots.All()));

        Assert.Equal(materials.Select(material => material.Id), levels.Select(level => level.MaterialId));
        foreach (var level in levels.Where(level => level.Left is Amount.ByVolume))
        {
            var left = lots.Where(lot => lot.MaterialId == level.MaterialId)
                .Sum(lot => ((Amount.ByVolume)lot.Left).Volume.Millilitres);
            Assert.Equal(left, ((Amount.ByVolume)level.Left).Volume.Millilitres, 6);
        }

        var white = materials.Single(material => material.Name == "white").Id;
        Assert.Equal(
            new Amount.ByVolume(Volume.FromMillilitres(820)),   // 40 of W-1 and 780 of W-2
            levels.Single(level => level.MaterialId == white).Left);
    }

    [Fact]
    public void Its_batches_are_thirteen_and_its_pieces_twenty_one()
    {
        var (batches, pieces) = studio.Read(view => (view.Batches.All(), view.Pieces.All()));

        Assert.Equal(Enumerable.Range(1, 13), batches.Select(batch => batch.Number));
        Assert.Equal(Enumerable.Range(1, 21), pieces.Select(piece => piece.Number));
    }

    [Fact]
    public void Piece_17_dries_on_shelf_B3()
    {
        var piece = studio.Read(view => view.Pieces.Find(17));

        Assert.NotNull(piece);
        Assert.Equal(new Surface.Panel(Length.FromCentimetres(30), Length.FromCentimetres(30)), piece.Surface);
        Assert.Equal(("bloom", 6, "ocean", "Mira"), (piece.Technique, piece.Colours, piece.Recipe, piece.Maker));
        Assert.Equal((Stage.Drying, "B3"), (piece.Stage, piece.Shelf));
    }

    [Fact]
    public void What_was_poured_by_a_recipe_covers_the_piece_three_millimetres_thick()   // 2.5 mm and a fifth run off
    {
        var piece = studio.Read(view => view.Pieces.Find(17));

        // 30 cm square at 3.0 mm is 270 mL; each part is booked to the microlitre.
        var poured = piece!.Parts.Select(part => part.Amount).OfType<Amount.ByVolume>()
            .Sum(one => one.Volume.Millilitres);
        Assert.Equal(270, poured, 0.003);
    }

    [Fact]
    public void Nothing_is_poured_from_a_batch_before_it_is_mixed_nor_after_the_last_record()
    {
        var (batches, pieces) = studio.Read(view => (view.Batches.All(), view.Pieces.All()));

        foreach (var piece in pieces)
        {
            Assert.InRange(
                piece.PouredAt,
                batches.Single(batch => batch.Number == piece.Batch).MadeAt,
                SampleStudio.LastRecord);
        }
    }

    [Fact]
    public void The_studio_was_read_at_twenty_to_nine_and_the_cupboard_is_warmer()
    {
        var rooms = studio.Read(view => view.Rooms.Current());

        Assert.Equal(["studio", "cupboard"], rooms.Select(room => room.Room));
        Assert.Equal((20, 55), (rooms[0].Temperature.Celsius, rooms[0].Humidity.Percent));
        Assert.Equal(new DateTimeOffset(2026, 11, 25, 7, 40, 0, TimeSpan.Zero), rooms[0].At);
        Assert.Equal((23, 45), (rooms[1].Temperature.Celsius, rooms[1].Humidity.Percent));
    }

    [Fact]
    public void Its_shelves_are_twelve_and_rack_C_stands_in_the_cupboard()
    {
        var shelves = studio.Read(view => view.Rooms.Shelves());

        Assert.Equal(
            ["A1", "A2", "A3", "A4", "B1", "B2", "B3", "B4", "C1", "C2", "C3", "C4"],
            shelves.Select(shelf => shelf.Label));
        Assert.All(shelves, shelf => Assert.Equal(shelf.Label[0] == 'C' ? "cupboard" : "studio", shelf.Room));
    }

    [Fact]
    public void It_is_written_only_into_an_empty_studio()
    {
        Assert.Throws<InvalidOperationException>(() => studio.Write(SampleStudio.WriteInto));
    }
}
