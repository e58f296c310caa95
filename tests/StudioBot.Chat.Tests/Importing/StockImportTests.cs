using System.Text;
using StudioBot.Chat.Importing;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Importing;

public sealed class StockImportTests : IDisposable
{
    private const string Names = "material,form,lot,bought_at,bought,left,unit,price,value,currency,opened_at,stopped_at,stopped_why\r\n";

    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_lot_comes_with_all_that_its_row_says()
    {
        var done = Taken(Names
            + "white,liquid,W-1,2026-10-01T08:30:00+02:00,500,430.5,ml,24.90,20.00,EUR,2026-10-03,2026-11-01T12:00:00Z,smells\r\n");

        Assert.Equal((1, 0, new Money(2000)), (done.Lots, done.Named.Count, done.Worth));
        var lot = Assert.Single(Lots());
        Assert.Equal(("W-1", new Money(2490), new Money(2000)), (lot.Label, lot.Price, lot.Worth));
        Assert.Equal(new DateTimeOffset(2026, 10, 1, 6, 30, 0, TimeSpan.Zero), lot.BoughtAt);
        Assert.Equal(new DateTimeOffset(2026, 10, 3, 10, 0, 0, TimeSpan.Zero), lot.OpenedAt);     // noon in Vienna
        Assert.Equal(new LotStop(new DateTimeOffset(2026, 11, 1, 12, 0, 0, TimeSpan.Zero), "smells"), lot.Stopped);
        Assert.Equal(430.5, Assert.IsType<Amount.ByVolume>(lot.Left).Volume.Millilitres);
        var lines = studio.Look(view => view.Stock.Of(done.By));
        Assert.Equal((StockReason.Opening, true), (Assert.Single(lines).Reason, lines[0].Fills));
        Assert.Equal(("import", "Mira"), (done.By.Kind, done.By.Author?.Name));
    }

    [Fact]
    public void A_short_table_by_hand_is_enough()
    {
        var done = Taken("Unit,Material,Left,form\nml,white,300,\npiece,sponge,12,\npiece,sponge,3,counted\n");
        Assert.Equal((3, "sponge", default), (done.Lots, Assert.Single(done.Named), done.Worth));
        Assert.All(Lots(), lot => Assert.Equal((null, null, studio.Now), (lot.Label, lot.Price, lot.BoughtAt)));
        Assert.All(Lots(), lot => Assert.Equal(lot.Bought, lot.Left));
        Assert.Contains("15", studio.Hear("stock sponge"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_left_is_worth_its_part_of_the_price_unless_said()
    {
        Assert.Equal(new Money(1245), Taken(Names + "white,,,,500,250,ml,24.90,,,,,\n").Worth);     // half of 24.90
        Assert.Equal(default, Taken(Names + "white,,,,500,250,ml,24.90,0,,,,\n").Worth);
    }

    [Fact]
    public void Semicolons_come_with_decimal_commas()
    {
        Assert.Equal(new Money(1850), Taken("material;left;unit;value\r\nwhite;0,125;ml;18,50\r\n").Worth);
        Assert.Equal(0.125, Assert.IsType<Amount.ByVolume>(Lots()[0].Left).Volume.Millilitres);
    }

    [Theory]
    [InlineData("white,liquid,,,500,,ml,,,,,,", "Line 2, left: a figure is missing. Write it like 430.5")]
    [InlineData("white,liquid,,,500,0,ml,,,,,,", "Line 2, left: nothing is there. Leave out a lot that is empty.")]
    [InlineData("white,liquid,,,500,-3,ml,,,,,,", "Line 2, left: “-3” is no figure from 0 up. Write it like 430.5")]
    [InlineData("white,liquid,,,500,1e3,ml,,,,,,", "Line 2, left: “1e3” is no figure from 0 up. Write it like 430.5")]
    [InlineData("white,liquid,,,500,\"1,000\",ml,,,,,,", "Line 2, left: “1,000” may be two figures. Write 1000 or 1.000")]
    [InlineData("white,liquid,,,500,1.2345,ml,,,,,,", "Line 2, left: “1.2345” has too many places. 3 at most, like 430.5")]
    [InlineData("white,liquid,,,500,1000000.5,ml,,,,,,", "Line 2, left: 1000000.5 is too much for one lot. 1000000 at most.")]
    [InlineData("cup,counted,,,5,2.5,piece,,,,,,", "Line 2, left: “2.5” has too many places. Write whole pieces, like 40")]
    [InlineData("white,liquid,,,1,1,ml,1.999,,,,,", "Line 2, price: “1.999” has too many places. 2 at most, like 24.90")]
    [InlineData("white,liquid,,,1,1,ml,,-5,,,,", "Line 2, value: “-5” is no figure from 0 up. Write it like 24.90")]
    [InlineData("white,liquid,,,1,1,L,,,,,,", "Line 2, unit: “L” is no unit of a material that is liquid. Write ml.")]
    [InlineData("white,liquid,,,1,1,,,,,,,", "Line 2, unit: the unit is missing. Write ml.")]
    [InlineData("white,,,,1,1,g,,,,,,", "Line 2, unit: “white” is kept in ml. Write it in ml.")]
    [InlineData("white,fluid,,,1,1,ml,,,,,,", "Line 2, form: “fluid” is no form. There are liquid, powder, counted, mixture, resin A, hardener B.")]
    [InlineData("WHITE,powder,,,1,1,g,,,,,,", "Line 2, form: “white” is liquid here. Write liquid, or give it another name.")]
    [InlineData("chalk,,,,1,1,g,,,,,,", "Line 2, form: “chalk” is no material here, and its form is missing. "
        + "Name one that is here, or write liquid, powder, counted, mixture, resin A, hardener B.")]
    [InlineData(",liquid,,,1,1,ml,,,,,,", "Line 2, material: no material is named. Write its name: white")]
    [InlineData("\"a\nb\",liquid,,,1,1,ml,,,,,,", "Line 2, material: “a b” holds what nobody can type. Write it on one line.")]
    [InlineData("white,liquid,A-23456789012345678901,,1,1,ml,,,,,,", "Line 2, lot: “A-23456789012345678901” is too long. 20 characters at most.")]
    [InlineData("white,liquid,,,1,1,ml,,,USD,,,", "Line 2, currency: “USD” is not the studio's currency. Write the sums in EUR.")]
    [InlineData("white,liquid,,11/12/2026,1,1,ml,,,,,,",
        "Line 2, bought_at: “11/12/2026” is no day or moment. Write 2026-11-25, or 2026-11-25T10:00:00+01:00")]
    [InlineData("white,liquid,,2026-11-26,1,1,ml,,,,,,", "Line 2, bought_at: “2026-11-26” is still to come. Write when it was, or leave it empty.")]
    [InlineData("white,liquid,,,1,1,ml,,,,,,sour",
        "Line 2, stopped_at: why it was stopped is there, since when is not. Write 2026-11-25, or leave both empty.")]
    [InlineData("white,liquid,,,1,1", "Line 2: 6 cells stand here below 13 columns. Leave a cell empty rather than out.")]
    [InlineData("white,liquid,,,1,1,ml,,,,,,a,b", "Line 2: 14 cells stand here below 13 columns. Put a cell that holds a comma in \".")]
    [InlineData("white,liquid,5\",,1,1,ml,,,,,,", "Line 2: a \" stands within “5\"”. Put the whole cell in \" and each \" in it twice.")]
    [InlineData("\u001b[31mred,,,,1,1,ml,,,,,,", "Line 2, material: “[31mred” holds what nobody can type. Write it on one line.")]
    public void A_wrong_cell_is_told_with_line_and_column_and_what_would_work(string row, string told) =>
        Assert.Contains(told, Refused(Names + row + "\r\n").Select(trouble => trouble.ToString()));

    [Theory]
    [InlineData("", 1, "there is nothing in this file")]
    [InlineData("\uFEFF\r\n", 1, "there is nothing in this file")]
    [InlineData("material,left,unit\r\n", 1, "no lot stands below the names of the columns")]
    [InlineData("material,left\r\nwhite,1\r\n", 1, "this column is missing")]
    [InlineData("\nmaterial,left,unit,colour\r\n", 2, "“colour” is no column")]
    [InlineData("material,left,unit,left\r\n", 1, "this column is there twice")]
    [InlineData("white,300,ml\r\n", 1, "“white” is no column")]
    public void Wrong_columns_are_told(string text, int line, string what) =>
        Assert.Contains((line, what), Refused(text).Select(trouble => (trouble.Line, trouble.What)));

    [Fact]
    public void Another_alphabet_is_told_with_its_line()
    {
        byte[] latin = [.. Encoding.UTF8.GetBytes(Names), .. Encoding.Latin1.GetBytes("weiß,liquid,,,1,1,ml,,,,,,\r\n")];
        Assert.Equal("Line 2: this is not UTF-8. Save it as “CSV UTF-8”.", Assert.Single(Troubles(latin)).ToString());
    }

    [Fact]
    public void One_wrong_line_keeps_all_of_it_out_and_every_wrong_cell_is_told_in_order()
    {
        var before = Acts();
        var troubles = Refused(Names
            + "white,liquid,W-1,,1,1,ml,,,,,,\r\n"
            + "chalk,,,,1,1,g,,,,,,\r\n"
            + "white,liquid,w-1,,x,y,ml,,,,,,\r\n"
            + "white,liquid,W-1,,1,1,ml,,,,,,\r\n");
        Assert.Equal([(3, "form"), (4, "left"), (4, "bought"), (5, "lot")], troubles.Select(one => (one.Line, one.Column)));
        Assert.Equal("lot “W-1” stands in line 2 already", troubles[^1].What);
        Assert.Empty(Lots());
        Assert.Equal(before, Acts());
    }

    [Fact]
    public void A_lot_that_is_here_is_not_taken_twice()
    {
        studio.Tells("bought 500 ml white 24.90 lot W-1");
        var trouble = Assert.Single(Refused(Names + "White,,w-1,,1,1,ml,,,,,,\r\nlamp black,,W-1,,1,1,ml,,,,,,\r\n"));
        Assert.Equal("Line 2, lot: lot “w-1” of “white” is here already. Leave the line out, or give it another label.", trouble.ToString());
        Assert.Single(Lots());
    }

    [Fact]
    public void A_material_has_one_form_in_the_whole_file() =>
        Assert.Equal(
            "Line 3, form: “Chalk” is powder in line 2. Write powder, or give it another name.",
            Assert.Single(Refused(Names + "chalk,powder,,,1,1,g,,,,,,\r\nChalk,liquid,,,1,1,ml,,,,,,\r\n")).ToString());

    [Fact]
    public void It_is_taken_back_as_one_and_may_come_again()
    {
        var file = Names + "chalk,powder,C-1,,10,8,g,3.00,,,,2026-11-20,damp\r\nwhite,,W-1,,500,500,ml,24.90,,,,,\r\n";
        Taken(file);
        Assert.StartsWith("Taken back.", studio.Hear("undo"), StringComparison.Ordinal);
        Assert.Empty(Lots());
        Assert.All(studio.Look(view => view.Materials.Levels()), level => Assert.Equal(0, Chat.Asking.Need.UnitsOf(level.Left)));

        Assert.Equal((2, 0), (Taken(file).Lots, studio.Look(view => view.Materials.All().Count(one => one.Name == "chalk")) - 1));
        Assert.Equal(2, Lots().Count);
    }

    [Fact]
    public void What_was_used_of_it_since_keeps_it_here()
    {
        Taken(Names + "white,,W-1,,500,500,ml,24.90,,,,,\r\n");
        studio.Tells("used 20 ml white", "Pia");
        var act = studio.Look(view => view.Acts.Recent(null, studio.Now).Single(one => one.Kind == StockImport.Kind));
        Assert.StartsWith("Not taken back: later records rest on it.", studio.Hear($"undo act {act.Id}"), StringComparison.Ordinal);
        Assert.Single(Lots());
    }

    [Fact]
    public void Nobody_is_credited_for_it()
    {
        Taken(Names + "white,,W-1,,500,500,ml,24.90,,,,,\r\n");
        Assert.Empty(studio.Look(view => view.Money.Entries()));
    }

    private Imported.Done Taken(string text) => Assert.IsType<Imported.Done>(Into(Encoding.UTF8.GetBytes(text)));

    private IReadOnlyList<ImportTrouble> Refused(string text) => Troubles(Encoding.UTF8.GetBytes(text));

    private IReadOnlyList<ImportTrouble> Troubles(byte[] file) => Assert.IsType<Imported.Refused>(Into(file)).Troubles;

    private Imported Into(byte[] file) => studio.File.Write(session => StockImport.Into(
        session,
        file,
        new StudioZone(TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna")),
        new NewAct(StockImport.Kind, session.Members.All()[0], "import stock.csv", studio.Now)));

    private IReadOnlyList<Lot> Lots() => studio.Look(view => view.Lots.All());

    private int Acts() => studio.Look(view => view.Acts.These(Enumerable.Range(1, 50).Select(id => (long)id)).Count);
}
