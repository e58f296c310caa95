using StudioBot.Chat.Sharing;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>An order takes a week (common practice), which is worth two deliveries of the studio's own.</summary>
public sealed class DeliveriesTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public DeliveriesTests()
    {
        studio.Tells("material new saffron 250 ml 6.90");
        studio.Tells("bought 1000 ml saffron 27.60");
    }

    public void Dispose() => studio.Dispose();

    [Fact]
    public void From_ordered_to_bought_it_is_learnt_and_said()
    {
        Ordered(10);
        Assert.Equal((7, 0), (Lead().Lead.Days, Lead().Own));

        Ordered(12);

        // (2·7 + 10 + 12)/4
        Assert.Equal((9, 2), (Math.Round(Lead().Lead.Days, 6), Lead().Own));
        Assert.True(Lead().Lead.Deviation > 0);
    }

    [Fact]
    public void Said_again_while_it_is_on_its_way_it_is_the_same_order()
    {
        foreach (var _ in new[] { 1, 2 })
        {
            studio.Tells("ordered saffron");
            studio.Now += TimeSpan.FromDays(4);
            studio.Tells("ordered saffron");
            studio.Now += TimeSpan.FromDays(6);
            studio.Tells("bought 250 ml saffron 6.90");
            studio.Now += TimeSpan.FromDays(1);
        }

        Assert.Equal((8.5, 2), (Math.Round(Lead().Lead.Days, 6), Lead().Own));     // (2·7 + 10 + 10)/4
    }

    [Fact]
    public void What_is_written_down_and_bought_at_once_is_no_delivery()
    {
        Ordered(0.1);
        Ordered(0.4);
        Assert.Equal((7, 0), (Lead().Lead.Days, Lead().Own));

        Ordered(1);
        Ordered(1);
        Assert.Equal((4, 2), (Math.Round(Lead().Lead.Days, 6), Lead().Own));       // (2·7 + 1 + 1)/4
    }

    [Fact]
    public void The_day_it_was_ordered_counts()
    {
        foreach (var _ in new[] { 1, 2 })
        {
            studio.Now = new(DateOnly.FromDateTime(studio.Now.Date), new TimeOnly(11, 0), TimeSpan.Zero);   // noon of Vienna in winter
            studio.Tells("ordered saffron yesterday");
            studio.Now += TimeSpan.FromDays(8);
            studio.Tells("bought 250 ml saffron 6.90");
            studio.Now += TimeSpan.FromDays(2);
        }

        Assert.Equal((8, 2), (Math.Round(Lead().Lead.Days, 6), Lead().Own));       // (2·7 + 9 + 9)/4
    }

    [Fact]
    public void What_is_taken_back_is_not_learnt_from()
    {
        Ordered(10);
        studio.Tells("ordered saffron");
        studio.Now += TimeSpan.FromDays(12);
        studio.Tells("bought 250 ml saffron 6.90");
        Assert.Equal(2, Lead().Own);

        Assert.True(studio.Say("undo").Recorded);
        Assert.Equal(0, Lead().Own);
    }

    [Fact]
    public void What_was_set_is_what_is_believed_before()
    {
        studio.Tells("material saffron delivery 3 days");
        Assert.Equal(3, Lead().Lead.Days);
        Ordered(5);
        Ordered(5);

        Assert.Equal(4, Lead().Lead.Days, 6);       // (2·3 + 5 + 5)/4
    }

    [Fact]
    public void Buy_says_on_how_many_it_rests()
    {
        Ordered(10);
        Ordered(12);
        foreach (var _ in Enumerable.Range(0, 8))
        {
            studio.Now += TimeSpan.FromDays(3);
            studio.Tells("used 40 ml saffron");
        }

        Assert.Contains("an order takes 9 days, by 2 own deliveries.", studio.Hear("buy saffron"), StringComparison.Ordinal);
    }

    private void Ordered(double days)
    {
        studio.Tells("ordered saffron");
        studio.Now += TimeSpan.FromDays(days);
        studio.Tells("bought 250 ml saffron 6.90");
        studio.Now += TimeSpan.FromDays(1);
    }

    private Deliveries Lead() => studio.Look(view => Deliveries.Of(
        view.Materials.All().Single(one => one.Name == "saffron"), new Studio(view, Sample.Practice, isSample: false)));
}
