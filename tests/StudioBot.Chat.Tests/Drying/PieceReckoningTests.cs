using System.Diagnostics;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using Part = StudioBot.Records.Recipes.Part;

namespace StudioBot.Chat.Tests.Drying;

/// <summary>The figures are those worked by hand for the ready day, and common practice, reached through the records.</summary>
public sealed class PieceReckoningTests : IDisposable
{
    private readonly SmallStudio studio = new();

    public void Dispose() => studio.Dispose();

    // worked by hand: 2.5 mm, 20 °C 55 %, fresh: 5.14 / 10.7 / 22.2 days left at 10 / 50 / 90 %
    [Fact]
    public void A_fresh_pour_has_its_techniques_film_and_the_air_of_its_room()
    {
        var look = studio.Reads("studio", 20, 55).Outlook(studio.Pours(), 0);

        Assert.Equal((2.5, FilmGrounds.Technique, "studio"), (look.Film.Millimetres, look.FilmGrounds, look.Room));
        Assert.Equal(5.14, Left(look.ReadyAt(0.1)), 0.01);
        Assert.Equal(10.7, Left(look.LikelyAt), 0.05);
        Assert.Equal(22.2, Left(look.LateAt), 0.05);
        Assert.Equal(10.7, Left(look.ReadyAt(0.5000001)), 0.05);
        Assert.Equal(0.5, look.OddsAt(look.LikelyAt!.Value)!.Value, 0.002);
    }

    // worked by hand: 1.2 mm, 22 °C 45 %: 2.14 days; 150 ml less 12 and 30 are 108 ml on 900 cm²
    [Fact]
    public void What_was_poured_less_what_was_left_and_caught_is_the_film()
    {
        var number = studio.Reads("studio", 22, 45).Pours(millilitres: 150);
        studio.Happens(number, 0, new PieceEvent.Left(Volume.FromMillilitres(12)));
        var look = studio.Happens(number, 0, new PieceEvent.Caught(Volume.FromMillilitres(30))).Outlook(number, 0);

        Assert.Equal((1.2, FilmGrounds.Poured), (Math.Round(look.Film.Millimetres, 9), look.FilmGrounds));
        Assert.Equal(2.14, Left(look.LikelyAt), 0.01);
    }

    [Theory]
    [InlineData(324, 3.0, FilmGrounds.Poured)]              // 3.0 mm and a fifth that ran off (POU-01)
    [InlineData(3240, 2.5, FilmGrounds.Technique)]          // 36 mm is no film: a slip
    public void What_nobody_caught_is_taken_by_technique_and_a_slip_is_no_film(double poured, double film, FilmGrounds grounds)
    {
        var look = studio.Outlook(studio.Pours(millilitres: poured), 0);

        Assert.Equal(film, look.Film.Millimetres, 6);
        Assert.Equal(grounds, look.FilmGrounds);
    }

    [Fact]
    public void A_studios_own_film_lies_over_the_trades_and_an_unknown_technique_is_the_usual_one()
    {
        studio.Write(0, (session, act) => session.Studio.Override(new("bloom", Length.FromMillimetres(3.1), null), act));

        Assert.Equal(3.1, studio.Outlook(studio.Pours(), 0).Film.Millimetres, 6);
        var unknown = studio.Outlook(studio.Pours(technique: "marbling"), 0);
        Assert.Equal((3.1, FilmGrounds.UsualTechnique), (Math.Round(unknown.Film.Millimetres, 6), unknown.FilmGrounds));
    }

    // worked by hand: as the fresh one, not yet on day 10: 5.08 days more, 16.7 by the late end
    [Fact]
    public void Not_yet_moves_the_day_out()
    {
        var number = studio.Reads("studio", 20, 55).Pours();
        var look = studio.Happens(number, 10, new PieceEvent.NotYet(SmallStudio.Day(12))).Outlook(number, 10);

        Assert.Equal(5.08, Left(look.LikelyAt, 10), 0.02);
        Assert.Equal(16.7, Left(look.LateAt, 10), 0.05);
        Assert.Equal(SmallStudio.Day(12), look.QuietUntil);
        Assert.Null(studio.Outlook(number, 12.5).QuietUntil);
    }

    // worked by hand: dry at 9; dry at 12; not yet 9 then dry 11 (2.6 mm), in the reference room: b -0.0975, s_b 0.251; then the fresh
    // one, in the same cupboard, 9.69 days at 20 °C 55 %, which dries at 0.749 of it
    [Fact]
    public void Finished_pieces_teach_the_studio()
    {
        studio.Reads("cupboard", 23, 50).Reads("studio", 20, 55);
        int[] taught = [studio.Pours(shelf: "C1"), studio.Pours(shelf: "C1"), studio.Pours(technique: "swipe", shelf: "C1")];
        studio.Happens(taught[0], 9, new PieceEvent.Dry())
            .Happens(taught[2], 9, new PieceEvent.NotYet(null))
            .Happens(taught[2], 11, new PieceEvent.Dry())
            .Happens(taught[1], 12, new PieceEvent.Dry());
        var look = studio.Outlook(studio.Pours(day: 20, shelf: "C1"), 20);

        Assert.Equal(3, look.Shift.Pieces);
        Assert.Equal(-0.0975, look.Shift.Mean, 0.002);
        Assert.Equal(0.251, look.Shift.Deviation, 0.002);
        Assert.Equal(9.69 * 0.749, Left(look.LikelyAt, 20), 0.03);
    }

    // worked by hand: 150 g of water, 0.1 g, day 3 640.4 g, day 5 628.9 g: 5.19 days left; and day 8 621.3, day 12 617.2: P 0.661,
    // the late end 4.79 days; with a dry mass of 615 ± 7.5 g from the bare panel P 0.689
    [Fact]
    public void Weighings_narrow_the_day_and_the_bare_panel_helps()
    {
        var water = studio.Reads("studio", 20, 55).Names("test water", 150.0 / 225, 0);
        var number = studio.Pours(with: (_, piece) => piece with { Parts = [Part.Of(water, Ml(225))] });
        studio.Weighs(number, 3, 640.4).Weighs(number, 5, 628.9);
        Assert.Equal(5.19, Left(studio.Outlook(number, 5).LikelyAt, 5), 0.02);

        var look = studio.Weighs(number, 8, 621.3).Weighs(number, 12, 617.2).Outlook(number, 12);
        var estimate = Assert.IsType<ReadyOutlook.Expected>(look.Outlook).Estimate;
        Assert.Equal(0.661, estimate.Probability, 0.002);
        Assert.Equal(4.79, Left(look.LateAt, 12), 0.03);
        Assert.Equal(4, estimate.Grounds.Weighings);

        studio.Happens(number, 0, new PieceEvent.Bare(Mass.FromGrams(615))).Weighs(number, 0, 765);
        Assert.Equal(0.689, Assert.IsType<ReadyOutlook.Expected>(studio.Outlook(number, 12).Outlook).Estimate.Probability, 0.002);
    }

    [Fact]
    public void A_bare_panel_says_nothing_without_a_fresh_weighing()
    {
        var number = studio.Pours();
        studio.Happens(number, 0, new PieceEvent.Bare(Mass.FromGrams(400))).Weighs(number, 1, 600.1);

        Assert.Null(studio.Outlook(number, 1).Known.Dry);
    }

    // 5 % of the water an hour is added back: 135 g (0.6 g/ml on 225 ml) make 6.75 g; 45 % of the paint stays
    [Fact]
    public void The_first_hours_loss_is_added_back()
    {
        var number = studio.Pours();
        studio.Happens(number, 0, new PieceEvent.Bare(Mass.FromGrams(400))).Weighs(number, 1.0 / 24, 640.5);

        Assert.Equal(400 + 0.45 * (640.5 + 6.75 - 400), studio.Outlook(number, 1).Known.Dry!.Expected.Grams, 6);
    }

    // common practice: 0.6 g/ml of an unknown paint, on 225 ml; with sides 2 cm deep under 1 mm 249 ml
    [Fact]
    public void Water_is_common_practice_where_nobody_knows_the_mix()
    {
        Assert.Equal(135, studio.Outlook(studio.Pours(), 0).Known.Water.Grams, 6);
        var deep = studio.Pours(with: (_, piece) => piece with { Depth = Length.FromCentimetres(2) });
        Assert.Equal(149.4, studio.Outlook(deep, 0).Known.Water.Grams, 6);
    }

    // 90 ml at 1.2 g/ml and 0.5 solids hold 54 g, 10 ml the trade's water (1.0, none stays) 9.98 g: 0.64 g/ml on 225 ml
    [Fact]
    public void Water_comes_from_the_solids_of_its_parts_and_of_the_recipe_of_its_batch()
    {
        var paint = studio.Names("test paint", 1.2, 0.5);
        var thinner = studio.Names("water", null, null);
        Part[] parts = [Part.Of(paint, Ml(90)), Part.Of(thinner, Ml(10))];
        var own = studio.Outlook(studio.Pours(with: (_, piece) => piece with { Parts = parts }), 0).Known.Water.Grams;
        var batch = studio.Pours(with: (session, piece) =>
        {
            var recipe = session.Recipes.Add("test mix", parts);
            var mira = session.Members.All()[0];
            var act = session.Acts.Begin(new("mix", mira, "mix", SmallStudio.First));
            return piece with { Batch = session.Batches.Add(recipe, mira, SmallStudio.First, Volume.FromMillilitres(400), act).Number };
        });

        Assert.Equal(144, own, 0.2);
        Assert.Equal(own, studio.Outlook(batch, 0).Known.Water.Grams, 6);
    }

    [Fact]
    public void Weighings_in_whole_grams_are_those_of_a_kitchen_scale()
    {
        var number = studio.Pours(surface: new Surface.Disc(Length.FromCentimetres(4)));
        studio.Weighs(number, 3, 20).Weighs(number, 5, 19);

        Assert.True(studio.Outlook(number, 5).Known.Deviation.Grams >= 1);
        Assert.Contains("the scale is too rough for so little paint", studio.Says(number, 5), StringComparison.Ordinal);
        Assert.True(studio.Weighs(number, 6, 18.7).Outlook(number, 6).Known.Deviation.Grams < 0.2);
    }

    // two days in each room, each by its own clock; before its first shelf it lay in the first room
    [Fact]
    public void A_piece_dries_by_the_clock_of_the_room_it_lies_in()
    {
        studio.Reads("studio", 20, 55).Reads("cupboard", 23, 50);
        var number = studio.Pours();
        var look = studio.Happens(number, 2, new PieceEvent.Shelved("C1")).Outlook(number, 4);

        Assert.Equal("cupboard", look.Room);
        Assert.Equal(2 * 0.749 + 2, look.Elapsed.TotalDays, 0.002);      // 0.749: worked by hand, 20 °C 55 %
        studio.Happens(number, 4, new PieceEvent.Shelved(null));
        Assert.Equal(2 * 0.749 + 2 + 0.749, studio.Outlook(number, 5).Elapsed.TotalDays, 0.003);
    }

    [Theory]
    [InlineData(8, 50, NoReadyDay.TooCold)]
    [InlineData(-4, 50, NoReadyDay.TooCold)]
    [InlineData(20, 99, NoReadyDay.AirTooDamp)]             // lacks 0.02 kPa: the clock stands still
    public void Air_in_which_nothing_dries_gives_no_day(double celsius, double percent, NoReadyDay why)
    {
        var look = studio.Reads("studio", celsius, percent).Outlook(studio.Pours(), 0);

        Assert.Equal(why, Assert.IsType<ReadyOutlook.NoDay>(look.Outlook).Kind);
        Assert.Null(look.LikelyAt);
        Assert.Null(look.LateAt);
    }

    [Theory]
    [InlineData("lifted at one corner", MakerSays.CoatLifted)]
    [InlineData("went cloudy", MakerSays.CoatLifted)]
    [InlineData("still wet under it", MakerSays.CoatLifted)]
    [InlineData("it was not dry", MakerSays.CoatLifted)]
    [InlineData("dewetted at the rim", null)]
    [InlineData("fisheyes", null)]
    public void A_coat_that_failed_from_moisture_speaks_against_dry_at_the_coat(string why, MakerSays? says)
    {
        var number = studio.Reads("studio", 23, 50).Pours();
        Coats(number, 8).Happens(number, 9, new PieceEvent.Failed(why))
            .Happens(number, 10, new PieceEvent.Sanded())
            .Happens(number, 11, new PieceEvent.NotYet(null));
        var words = studio.Outlook(number, 12).Known.Words;

        Assert.Equal(MakerSays.NotYet, words[^1].Says);
        Assert.Equal(says is null ? 1 : 2, words.Count);
        if (says is { } said)
        {
            Assert.Equal(said, words[0].Says);
            Assert.Equal(8, words[0].Elapsed.TotalDays, 6);
        }
    }

    // The same evidence in other words: a coat that cured clear counts as dry at the coat.
    [Fact]
    public void A_coat_that_stood_teaches_as_dry_at_the_coat()
    {
        var number = studio.Reads("studio", 23, 50).Pours();
        Coats(number, 9).Happens(number, 16, new PieceEvent.Cured());
        var taught = studio.Reckons(20, reckoning => reckoning.Taught.For(Length.FromMillimetres(2.5), "studio"));

        var lesson = new Lesson(new DryingPiece(Length.FromMillimetres(2.5), Mass.FromGrams(135))
        {
            Words = [new MakerWord(TimeSpan.FromDays(9), MakerSays.Dry)],
            Room = "studio",
        });
        Assert.Equal(StudioDrying.From([lesson]).For(Length.FromMillimetres(2.5), "studio"), taught);
    }

    [Fact]
    public void What_dries_no_more_has_no_outlook()
    {
        var number = studio.Pours();
        studio.Happens(number, 9, new PieceEvent.Dry());

        Assert.Null(studio.Reckons(9, reckoning => reckoning.Of(number)));
        Assert.Null(studio.Reckons(9, reckoning => reckoning.Of(4711)));
        Assert.Empty(studio.Reckons(9, reckoning => reckoning.Drying()));
    }

    [Fact]
    public void Three_hundred_pieces_take_a_moment()
    {
        for (var day = 0; day < 60; day++)
        {
            studio.Reads("studio", 18 + day % 5, 50 + day % 9, day);
        }

        for (var i = 0; i < 350; i++)
        {
            var number = studio.Pours(day: 50);
            for (var weighing = 0; weighing < 4; weighing++)
            {
                studio.Weighs(number, 52 + weighing, 640.1 - 4 * weighing + 0.4 * weighing * weighing);
            }

            if (i < 50)
            {
                studio.Happens(number, 59, new PieceEvent.Dry());
            }
        }

        var watch = Stopwatch.StartNew();
        var (looks, pieces) = studio.Reckons(60, reckoning => (reckoning.Drying(), reckoning.Taught.Pieces));
        watch.Stop();

        Assert.Equal((300, 50), (looks.Count, pieces));
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(10));      // a second on a free machine, ten on a busy one
    }

    private SmallStudio Coats(int number, double day) => studio.Happens(
        number,
        day,
        new PieceEvent.Coated(new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60)) { Ratio = new MixRatio([2, 1]) }));

    private static Amount.ByVolume Ml(double millilitres) => new Amount.ByVolume(Volume.FromMillilitres(millilitres));

    private static double Left(DateTimeOffset? at, double day = 0) => (at!.Value - SmallStudio.Day(day)).TotalDays;
}
