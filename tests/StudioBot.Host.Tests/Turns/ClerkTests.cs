using StudioBot.Host.Tests.Support;
using StudioBot.Records.Members;

namespace StudioBot.Host.Tests.Turns;

/// <summary>How somebody comes in from outside.</summary>
public sealed class ClerkTests : IDisposable
{
    private const long Stranger = 99;
    private const string Invitation = "Ask a steward of this studio for an invitation.";

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public async Task A_stranger_hears_one_neutral_line_a_day()
    {
        await desk.Settle(
            desk.Message(1, Stranger, 1, "stock"),
            desk.Message(2, Stranger, 2, "room 20C 58%"),
            desk.Message(3, Stranger, 3, "piece 17"));
        Assert.Equal([Invitation], desk.Posted().Select(letter => letter.Plain));

        desk.Clock.Advance(TimeSpan.FromHours(24) - TimeSpan.FromSeconds(1));
        desk.Reopen();
        await desk.Settle(desk.Message(9, Stranger, 9, "/start"), desk.Message(10, Stranger, 10, "join ABCDEFGHJ2"));
        Assert.Empty(desk.Posted());

        desk.Clock.Advance(TimeSpan.FromSeconds(1));
        await desk.Settle(desk.Message(4, Stranger, 4, "hello?"));
        Assert.Equal([Invitation], desk.Posted().Select(letter => letter.Plain));
        Assert.Empty(desk.Recorded);
    }

    [Fact]
    public async Task A_stranger_in_the_group_is_met_with_silence()
    {
        await desk.Settle(
            desk.Message(1, StandInUpdates.GroupChat, 1, "what a nice pour", Stranger),
            desk.Message(2, StandInUpdates.GroupChat, 2, "/stock", Stranger),
            desk.Message(3, StandInUpdates.GroupChat, 3, "/join ABCDEFGHJ2", Stranger));
        Assert.Empty(desk.Posted());
        Assert.Equal(["/stock not of the studio", "/join … not of the studio"], desk.Refused);
    }

    [Fact]
    public async Task A_stranger_s_press_on_a_kept_button_does_nothing()
    {
        await desk.Settle(desk.Message(1, StandInUpdates.GroupChat, 1, "/room 20C 58%", Desk.Pia));
        var undo = desk.Posted()[0].Keys[0][0].Data;
        await desk.Settle(StandInUpdates.Press(2, StandInUpdates.GroupChat, 3, "p1", undo, Stranger));
        Assert.Single(desk.Recorded);
        Assert.Empty(desk.Posted());
        Assert.Equal(["This button is for members of the studio."], desk.Wire.Presses);
    }

    [Fact]
    public async Task A_stranger_s_press_on_a_plain_line_is_answered_by_a_notice_only()
    {
        await desk.Settle(
            StandInUpdates.Press(1, StandInUpdates.GroupChat, 3, "p1", "help", Stranger),
            StandInUpdates.Press(2, StandInUpdates.GroupChat, 3, "p2", "help", Stranger));
        Assert.Empty(desk.Posted());
        Assert.Equal(2, desk.Wire.Presses.Count(notice => notice == "This button is for members of the studio."));
    }

    [Fact]
    public async Task Wrong_codes_are_answered_once_a_day()
    {
        await desk.Settle(
            desk.Message(1, Stranger, 1, "join ABCDEFGHJ2"),
            desk.Message(2, Stranger, 2, "join ABCDEFGHJ3"),
            desk.Message(3, Stranger, 3, "join ABCDEFGHJ4"));
        Assert.Equal([Invitation], desk.Posted().Select(letter => letter.Plain));
    }

    [Fact]
    public async Task The_code_shown_where_it_runs_makes_a_stranger_a_steward_once()
    {
        desk.File.Write(session => session.Claim.Put("ABCDEFGHJK", desk.Now.AddMinutes(15)));
        await desk.Settle(desk.Message(1, Stranger, 1, "join ABCDEFGHJK"), desk.Message(2, Stranger, 2, "room 20C 58%"));
        await desk.Settle(desk.Message(3, Stranger + 1, 3, "join ABCDEFGHJK"));
        Assert.True(desk.Log.Length == 0, desk.Log);
        var letters = desk.Posted();
        Assert.StartsWith("Welcome, ", letters[0].Plain, StringComparison.Ordinal);
        Assert.Contains("20 °C, 58 %", letters[1].Plain, StringComparison.Ordinal);
        Assert.Equal(Invitation, letters[2].Plain);
        Assert.Equal(Role.Steward, desk.File.Read(view => view.Members.ByAccount(Stranger))?.Role);
        Assert.Null(desk.File.Read(view => view.Members.ByAccount(Stranger + 1)));
    }

    [Fact]
    public async Task After_five_wrong_codes_the_right_one_is_void()
    {
        desk.File.Write(session => session.Claim.Put("ABCDEFGHJK", desk.Now.AddMinutes(15)));
        for (var wrong = 0; wrong < ClaimCode.MostTries; wrong++)
        {
            await desk.Settle(desk.Message(wrong, Stranger, wrong, $"join ABCDEFGHJ{wrong + 2}"));
        }

        await desk.Settle(desk.Message(9, Stranger, 9, "join ABCDEFGHJK"));
        Assert.Null(desk.File.Read(view => view.Members.ByAccount(Stranger)));
    }
}
