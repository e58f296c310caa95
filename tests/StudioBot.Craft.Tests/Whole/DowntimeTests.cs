using System.Globalization;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Tests.Reminders;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>What a chat hears after the service was away, from 12:00 on.</summary>
public sealed class DowntimeTests
{
    private static readonly DateTimeOffset Noon = Plans.At("5 12:00");

    [Theory]
    [InlineData("00:01:00", 0, 3)]
    [InlineData("00:14:00", 0, 3)]
    [InlineData("00:15:00", 0, 3)]
    [InlineData("00:16:00", 1, 1)]
    [InlineData("08:00:00", 1, 1)]
    [InlineData("30.00:00:00", 1, 1)]
    [InlineData("400.00:00:00", 1, 1)]
    public void A_downtime_makes_no_storm(string away, int digests, int messages)
    {
        var now = Noon + TimeSpan.Parse(away, CultureInfo.InvariantCulture);
        var said = Gathering.Of(Enumerable.Range(0, 300).Select(number => Out(number, now)));

        Assert.Equal(digests, said.Count(message => message.IsDigest));
        Assert.Equal(messages, said.Count);
        Assert.Equal(300, said.SelectMany(message => message.Lines).Sum(line => line.Pings.Count));
    }

    [Theory]
    [InlineData("5 12:10")]
    [InlineData("5 20:00")]
    [InlineData("6 12:00")]
    public void A_window_that_closed_meanwhile_is_said_to_have_closed(string now)
    {
        var verdict = PingVerdict.Of(
            Plans.Planned(PingKind.WindowOpens, Noon), Plans.At(now),
            new SubjectState.Window(Noon, Noon.AddMinutes(10)), Plans.Wishes);

        var late = Assert.IsType<PingVerdict.TooLate>(verdict);
        Assert.Equal(Noon.AddMinutes(10), Assert.IsType<WhatHolds.Closed>(late.Now).At);
    }

    private static OutgoingPing Out(int number, DateTimeOffset now)
    {
        PingKind[] kinds = [PingKind.Ready, PingKind.Cured, PingKind.StockLow];
        var key = OccurrenceKey.Nth(kinds[number % 3], new PingSubject(PingSubjectKind.Piece, number), 1);
        var planned = new PlannedPing(key, Plans.Chat, Noon);
        var verdict = PingVerdict.Of(planned, now, new SubjectState.Standing(Noon), Plans.Wishes);
        return new OutgoingPing(planned, verdict, session: "", place: "");
    }
}
