using CsCheck;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

public sealed class GatheringTests
{
    private static readonly DateTimeOffset Noon = Plans.At("5 12:00");
    private static readonly PingVerdict Missed = new PingVerdict.TooLate(new WhatHolds.Still(Noon));

    [Fact]
    public void Pieces_of_one_session_in_one_place_are_one_line()
    {
        var message = Assert.Single(Gathering.Of(Enumerable.Range(1, 6)
            .Select(piece => Ping(piece, PingKind.Ready, 0, "pour 4", piece <= 4 ? "shelf A" : "shelf B"))));

        Assert.Equal([("shelf A", 4), ("shelf B", 2)], message.Lines.Select(line => (line.Place, line.Pings.Count)));
        Assert.False(message.IsDigest);
    }

    [Theory]
    [InlineData(60, 1)]
    [InlineData(61, 2)]
    public void A_minute_holds_them_together(int seconds, int messages) => Assert.Equal(
        messages,
        Gathering.Of([Ping(1, PingKind.Ready, 0), Ping(2, PingKind.Ready, seconds)]).Count);

    [Fact]
    public void A_long_row_of_pings_does_not_hang_together() => Assert.Equal(
        [2, 2, 1],
        Gathering.Of(Enumerable.Range(0, 5).Select(at => Ping(at, PingKind.Ready, at * 50)))
            .Select(message => message.Lines.Sum(line => line.Pings.Count)));

    [Fact]
    public void Kinds_and_chats_are_messages_of_their_own()
    {
        var messages = Gathering.Of(
            [Ping(1, PingKind.StockLow, 0), Ping(2, PingKind.WindowCloses, 0), Ping(3, PingKind.Ready, 0, chat: 9)]);

        // The most pressing first.
        Assert.Equal(
            [(Plans.Chat, PingKind.WindowCloses), (Plans.Chat, PingKind.StockLow), (9L, PingKind.Ready)],
            messages.Select(message => (message.Chat, Assert.Single(message.Lines).Kind)));
    }

    [Fact]
    public void All_that_came_too_late_is_one_digest_and_the_last()
    {
        var messages = Gathering.Of(
        [
            Ping(1, PingKind.Ready, 0, verdict: Missed),
            Ping(2, PingKind.Week, -9999, verdict: Missed),
            Ping(3, PingKind.Old, 0),
        ]);

        Assert.Equal([false, true], messages.Select(message => message.IsDigest));
        Assert.Equal([PingKind.Ready, PingKind.Week], messages[1].Lines.Select(line => line.Kind));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(250)]
    public void Five_hundred_at_once_are_five_messages_at_most(int missed)
    {
        var kinds = Enum.GetValues<PingKind>();
        var pings = Enumerable.Range(0, 500).Select(at => Ping(
            at, kinds[at % kinds.Length], at * 7, $"pour {at % 20}", $"shelf {at % 3}",
            verdict: at < missed ? Missed : new PingVerdict.Send())).ToList();

        var messages = Gathering.Of(pings);

        Assert.Equal(5, messages.Count);
        Assert.Equal(missed > 0 ? 1 : 0, messages.Count(message => message.IsDigest));
        Assert.Equal(
            [PingKind.WindowCloses, PingKind.WindowTonight, PingKind.WindowOpens],
            messages.Take(3).Select(message => message.Lines.Select(line => line.Kind).Distinct().Single()));
    }

    [Fact]
    public void Whatever_is_due_is_said_once_in_five_messages_a_chat()
    {
        var ping = Gen.Select(
            Gen.Int[0, 13], Gen.Int[0, 2000], Gen.Int[0, 4], Gen.Int[1, 3], Gen.Bool,
            (kind, second, place, chat, late) => (kind, second, place, chat, late));
        ping.Array[0, 80].Sample(all =>
        {
            var pings = all.Select((one, id) => Ping(
                id, (PingKind)one.kind, one.second, $"pour {one.place}", "", one.chat,
                one.late ? Missed : new PingVerdict.Send())).ToList();
            var messages = Gathering.Of(pings);
            var said = messages.SelectMany(message => message.Lines).SelectMany(line => line.Pings).ToList();
            return said.Count == pings.Count
                && said.Select(one => one.Planned.Key).ToHashSet().SetEquals(pings.Select(one => one.Planned.Key))
                && messages.GroupBy(message => message.Chat).All(chat =>
                    chat.Count() <= Gathering.MostMessages && chat.Count(message => message.IsDigest) <= 1)
                && messages.All(message => message.Lines.SelectMany(line => line.Pings)
                    .All(one => one.IsTooLate == message.IsDigest && one.Planned.Chat == message.Chat));
        });
    }

    [Fact]
    public void Only_what_is_said_goes_out()
    {
        PingVerdict[] silent =
            [new PingVerdict.Hold(Noon), new PingVerdict.Replan(Noon), new PingVerdict.Unwanted(WhyUnwanted.Sold)];

        Assert.All(
            silent,
            verdict => Assert.Throws<ArgumentException>(() => Ping(1, PingKind.Ready, 0, verdict: verdict)));
    }

    private static OutgoingPing Ping(
        int piece,
        PingKind kind,
        int second,
        string session = "",
        string place = "",
        long chat = Plans.Chat,
        PingVerdict? verdict = null)
    {
        var key = OccurrenceKey.Nth(kind, new PingSubject(PingSubjectKind.Piece, piece), 1);
        var planned = new PlannedPing(key, chat, Noon.AddSeconds(second));
        return new OutgoingPing(planned, verdict ?? new PingVerdict.Send(), session, place);
    }
}
