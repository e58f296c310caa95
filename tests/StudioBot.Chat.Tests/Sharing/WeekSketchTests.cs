using StudioBot.Chat.Pictures;
using StudioBot.Chat.Sharing;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class WeekSketchTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public WeekSketchTests()
    {
        studio.Now = new DateTimeOffset(2026, 11, 24, 9, 0, 0, TimeSpan.Zero);
        studio.File.Write(session => session.Members.AddAccount(501, session.Members.All().Single(one => one.Name == "Mira").Id, studio.Now));
    }

    public void Dispose() => studio.Dispose();

    // 1000 ml less 60 and 15 are 925, which last 12.3 weeks at 75 ml a week.
    [Fact]
    public void What_was_used_stands_against_what_is_left()
    {
        studio.Tells("bought 1 L white 12.00");
        studio.Tells("used 60 ml white", "Pia");
        studio.Tells("used 15 ml white");

        var row = Assert.Single(Figures().Rows);
        Assert.Equal(("white", "75 ml", "925 ml"), (row.Name, row.Used, row.Left));
        Assert.Equal(925.0 / 75, row.Weeks!.Value, 6);
    }

    [Fact]
    public void What_is_low_comes_first_and_what_is_undone_is_not_in_it()
    {
        studio.Tells("bought 1 L white 12.00");
        studio.Tells("bought 100 ml black 4.00");
        studio.Tells("used 60 ml white");
        studio.Tells("used 90 ml black");
        studio.Tells("used 5 ml white");
        Assert.True(studio.Say("undo").Recorded);

        var rows = Figures().Rows;
        Assert.Equal(["lamp black", "white"], rows.Select(row => row.Name));
        Assert.Equal(["low", ""], rows.Select(row => row.Low));
        Assert.Equal("60 ml", rows[1].Used);
    }

    [Fact]
    public void The_week_comes_with_its_picture_and_so_does_the_one_that_comes_by_itself()
    {
        studio.Tells("bought 1 L white 12.00");
        studio.Tells("used 60 ml white");
        var file = studio.Say("week").Reply.File!;
        Assert.Equal(("week.png", true), (file.Name, file.IsPicture));
        Assert.InRange(file.Content.Length, 1000, 200_000);

        studio.Ring();
        studio.Now = new DateTimeOffset(2026, 11, 29, 17, 0, 1, TimeSpan.Zero);         // Sunday, just past six in Vienna
        var told = studio.Ring().First(ping => ping.Reply.PlainText.StartsWith("The week to", StringComparison.Ordinal));
        Assert.Equal("week.png", told.Reply.File!.Name);
        Assert.InRange(told.Reply.File.Content.Length, 1000, 200_000);
    }

    // What is low stands in the words of it.
    [Fact]
    public void A_week_in_which_nothing_was_used_has_none()
    {
        studio.Tells("bought 1 ml black 4.00");
        Assert.Null(studio.Say("week").Reply.File);
    }

    private WeekFigures Figures() => studio.Look(view =>
    {
        var span = new WeekSpan(studio.Now.AddDays(-1), studio.Now.AddDays(6));
        return WeekSketch.Figures(
            "Week 48",
            span,
            view.Stock.HoldingBetween(span.From, span.Until),
            new ShelfNeeds(new Studio(view, LiveStudio.Practice, isSample: false), studio.Now).All());
    });
}
