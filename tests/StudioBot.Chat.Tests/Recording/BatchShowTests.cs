using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Recording;

public sealed class BatchShowTests
{
    [Fact]
    public void A_batch_shows_what_was_made_by_whom_and_when_and_what_was_poured_from_it()
    {
        var said = Phone.Says("batch 12").ReplaceLineEndings("\n");      // the invented studio: 17 to 20 were poured from 12

        Assert.StartsWith("Batch 12, medium: 1200 ml\n1200 ml made 21 Nov 10:00 by Mira;", said, StringComparison.Ordinal);
        Assert.Contains("17, Mira   drying, 21 Nov\n", said, StringComparison.Ordinal);
        Assert.Contains("20, Jonas  drying, 23 Nov\n", said, StringComparison.Ordinal);
        Assert.Contains("4 pieces.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_books_do_not_know_of_it_is_said()
    {
        var said = Phone.Says("batch 13");

        Assert.Contains("what is left of it is not on record.", said, StringComparison.Ordinal);
        Assert.Contains("What it took was not booked with it.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_took_and_what_is_left_come_from_the_stock()
    {
        var studio = new StockedStudio();
        var (paint, medium) = (studio.Liquid("neutral base"), studio.Liquid("medium", form: MaterialForm.Mixture));
        studio.Bought(paint, 200, 9, "N-4");
        studio.Bought(paint, 1000, 10, "N-5");
        studio.Write(session =>
        {
            var act = studio.Said(session, "mix", 11, who: studio.Pia);
            var recipe = session.Recipes.Add("medium", [Part.Of(paint, StockedStudio.Ml(300))], medium);
            session.Stock.Draw(paint, StockedStudio.Ml(300), StockReason.Mixed, act);
            var lot = session.Stock.Enter(
                new NewLot(medium, StockedStudio.Ml(300), StockedStudio.On(11)) { Label = "M-1" }, StockReason.Made, act);
            session.Batches.Add(recipe, studio.Pia, StockedStudio.On(11), Volume.FromMillilitres(300), act, lot);
        });
        studio.Went(medium, 120, 12);

        var reply = studio.Answer("batch 1");
        var said = reply.PlainText.ReplaceLineEndings("\n");

        // 300 made, 120 used; 200 of the 300 from one lot and 100 from the next are one row.
        Assert.StartsWith("Batch 1, medium: 180 ml left\n300 ml made 11 Nov 9:00 by Pia, lot M-1.\n", said, StringComparison.Ordinal);
        Assert.Contains("It took:\nneutral base  300 ml\nNo piece on record was poured from it.", said, StringComparison.Ordinal);
        Assert.Equal(["recipe medium", "lot M-1"], reply.Buttons.Select(button => button.Line));
    }

    [Fact]
    public void A_batch_of_many_pieces_goes_on_behind_a_button()
    {
        var studio = new StockedStudio();
        var paint = studio.Liquid("neutral base");
        studio.Write(session =>
        {
            var act = studio.Said(session, "mix", 11);
            var recipe = session.Recipes.Add("medium", [Part.Of(paint, StockedStudio.Ml(300))]);
            session.Batches.Add(recipe, studio.Mira, StockedStudio.On(11), Volume.FromMillilitres(300), act);
            for (var piece = 0; piece < 20; piece++)
            {
                session.Pieces.Pour(
                    new NewPiece(new Surface.Disc(Length.FromCentimetres(10)), "bloom", studio.Mira, StockedStudio.On(12)) { Batch = 1 }, act);
            }
        });

        Assert.Equal("batch 1 page 2", studio.Answer("batch 1").Buttons[0].Line);
        Assert.Contains("20, Mira", studio.Says("batch 1 page 4"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("batch 1")]
    [InlineData("batch 12")]
    [InlineData("batch 13")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
