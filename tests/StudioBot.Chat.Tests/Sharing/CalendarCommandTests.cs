using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class CalendarCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_drying_piece_has_its_likely_day_and_a_binned_one_has_it_cancelled()
    {
        studio.Say("pour 30cm panel bloom");
        var ready = Assert.Single(Sent("calendar"), Of("piece-1-ready"));
        Assert.True(ready.IsAllDay);
        Assert.Equal("CONFIRMED", ready.Status);
        Assert.Contains("Check by hand", ready.Description);

        studio.Now += TimeSpan.FromMinutes(5);
        studio.Say("bin 1");
        var gone = Assert.Single(Sent("calendar"), Of("piece-1-ready"));
        Assert.Equal((ready.Uid, "CANCELLED"), (gone.Uid, gone.Status));
        Assert.True(gone.Sequence > ready.Sequence);
    }

    [Fact]
    public void A_promise_stands_on_its_day()
    {
        studio.Say("pour 30cm panel bloom");
        studio.Say("due 1 24 december");
        Assert.Equal(new DateOnly(2026, 12, 24), Assert.Single(Sent("calendar"), Of("piece-1-due")).DtStart!.Date);
    }

    [Fact]
    public void The_week_stands_at_the_studio_s_own_hour()
    {
        // Sunday 18:00 in Vienna, an hour ahead of UTC in winter.
        var week = Assert.Single(Sent("calendar"), Of("week"));
        Assert.Equal(new DateTime(2026, 11, 29, 17, 0, 0, DateTimeKind.Utc), week.DtStart!.AsUtc);
    }

    [Fact]
    public void Mine_is_mine_alone()
    {
        studio.Say("pour 30cm panel bloom", by: "Pia");
        studio.Now += TimeSpan.FromMinutes(2);
        studio.Say("pour 20cm panel bloom");
        Assert.Equal(["piece-1-ready"], Sent("calendar mine", by: "Pia").Select(entry => entry.Uid!.Split('@')[0]));
        Assert.Null(LiveStudio.Empty().Say("calendar mine").Reply.File);
    }

    private static Predicate<CalendarEvent> Of(string id) => entry => entry.Uid!.StartsWith(id + "@", StringComparison.Ordinal);

    private List<CalendarEvent> Sent(string words, string by = "Mira")
    {
        var file = studio.Say(words, by).Reply.File!;
        Assert.Equal("text/calendar", file.MediaType);
        return [.. Calendar.Load(Encoding.UTF8.GetString(file.Content))!.Events];
    }
}
