using StudioBot.Chat.Sharing;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class LotTraceTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_is_followed_into_mixtures_of_mixtures()
    {
        studio.Tells("count medium 0 ml", agreed: true);            // so that the next is taken from 14
        studio.Tells("mix medium 400 ml");                          // batch 14, from N-5 and V-3
        studio.Tells("recipe reef 75 ml medium 25 ml thinner");
        studio.Tells("mix reef 100 ml");                            // batch 15

        var trace = Trace("N-5");

        Assert.Contains(trace.Uses, use => use.IsDirect && use.Into.Any(into => into.Batch == 14));
        Assert.Contains(trace.Uses, use => use.From.Batch == 14 && use.Into.Any(into => into.Batch == 15));
    }

    [Fact]
    public void What_was_added_later_goes_on_with_the_batch_from_then_on()
    {
        studio.Tells("mix medium 400 ml");                          // batch 14
        var before = Poured("pour 20cm round swipe white batch 14");
        studio.Now += TimeSpan.FromHours(1);
        studio.Tells("batch 14 added 30 ml thinner");
        studio.Now += TimeSpan.FromHours(1);
        var after = Poured("pour 20cm round swipe white batch 14");

        var pieces = Trace(Label("thinner")).Pieces.Select(piece => piece.End.Number).ToList();

        Assert.Contains(after, pieces);
        Assert.DoesNotContain(before, pieces);
    }

    [Fact]
    public void It_is_sure_only_where_every_step_named_it()
    {
        studio.Tells("mix medium 400 ml");                          // nobody names N-5
        var piece = Poured("pour 20cm round swipe white batch 14");

        Assert.False(Trace("N-5").Pieces.Single(one => one.End.Number == piece).IsSure);
        Assert.True(Trace(14).Pieces.Single(one => one.End.Number == piece).IsSure);
    }

    [Fact]
    public void A_piece_that_took_it_in_two_ways_stands_once_and_is_sure_if_one_way_is()
    {
        studio.Tells("dry 18");
        studio.Tells("coat 18 60 A 30 B");                          // of the oldest: H-11
        studio.Now += TimeSpan.FromHours(30);
        studio.Tells("sand 18");
        studio.Tells("coat 18 20 A 10 B lots R-2 H-11", agreed: true);

        var piece = Assert.Single(Trace("H-11").Pieces, one => one.End.Number == 18);

        Assert.True(piece.IsSure);
        Assert.Equal(2, piece.Ways.Count);
    }

    [Fact]
    public void What_became_of_a_piece_is_told_in_the_words_of_who_sold_it()
    {
        studio.Tells("dry 18");
        studio.Tells("coat 18 60 A 30 B lots R-2 H-11");
        studio.Tells("sold 18 85 to the lady from the market");

        Assert.Equal(
            "18 sold: to the lady from the market",
            Trace("H-11").Pieces.Single(one => one.End.Number == 18).Fate);
        Assert.Contains("18 sold", studio.Hear("lot H-11"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_undone_leads_nowhere()
    {
        studio.Tells("mix medium 400 ml");
        Poured("pour 20cm round swipe white batch 14");
        Assert.True(studio.Say("undo").Recorded);

        Assert.DoesNotContain(Trace("N-5").Pieces, piece => piece.Ways.Any(way => way.From.Batch == 14));
    }

    private LotTrace Trace(string label) => studio.Look(view =>
        LotTrace.Of(view.Lots.All().First(lot => lot.Label == label).Id, view, new StudioZone(TimeZoneInfo.Utc)));

    private LotTrace Trace(int batch) => studio.Look(view =>
        LotTrace.Of(view.Batches.Find(batch)!.LotId!.Value, view, new StudioZone(TimeZoneInfo.Utc)));

    private string Label(string material) => studio.Look(view => view.Lots.All()
        .First(lot => lot.MaterialId == view.Materials.All().Single(one => one.Name == material).Id && lot.Label is not null)
        .Label!);

    private int Poured(string words)
    {
        studio.Tells(words, agreed: true);
        return studio.Look(view => view.Pieces.All().Max(piece => piece.Number));
    }
}
