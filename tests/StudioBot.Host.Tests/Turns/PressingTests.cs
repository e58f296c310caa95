using System.Text.Json.Nodes;
using StudioBot.Host.Tests.Support;
using StudioBot.Records.Members;

namespace StudioBot.Host.Tests.Turns;

/// <summary>Buttons in the wrong hands, or too late: nothing happens, a few words say so, and it is written down.</summary>
public sealed class PressingTests : IDisposable
{
    private const long Nora = Desk.Nora;
    private const long Pia = Desk.Pia;
    private const long Stranger = 99;
    private const long Group = StandInUpdates.GroupChat;
    private const string TooOld = "This button is too old. Send the message again.";

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public async Task Pressed_by_another_it_does_nothing()
    {
        var yes = await Asked(Group, $"@{StandIn.BotName} ruom 20C 58%", Nora);
        await Nothing(Press(9, Group, yes, Pia), "This button is somebody else's. Send the message yourself.");
        Assert.Equal(["(a button) somebody else's button"], desk.Refused);

        await desk.Settle(Press(10, Group, yes, Nora));
        Assert.Single(desk.Recorded);
    }

    [Fact]
    public async Task Pressed_by_a_stranger_it_does_nothing()
    {
        var yes = await Asked(Group, $"@{StandIn.BotName} ruom 20C 58%", Nora);
        await Nothing(Press(9, Group, yes, Stranger), "This button is for members of the studio.");
        Assert.Equal(["(a button) not of the studio"], desk.Refused);
    }

    [Fact]
    public async Task Pressed_by_who_left_it_does_nothing()
    {
        var yes = await Asked(Pia, "ruom 20C 58%", Pia);
        desk.File.Write(session =>
        {
            var pia = session.Members.ByAccount(Pia)!;
            session.Members.Leave(pia.Id, session.Acts.Begin(new("leave", pia, "leave", desk.Now)));
        });
        await Nothing(Press(9, Pia, yes, Pia), "This button is for members of the studio.");
        Assert.Equal(Standing.Left, desk.File.Read(view => view.Refusals.Last(1))[0].Standing);
    }

    [Fact]
    public async Task In_another_chat_it_does_nothing()
    {
        var yes = await Asked(Nora, "ruom 20C 58%", Nora);
        await Nothing(Press(9, Group, yes, Nora), TooOld);
        Assert.Equal(["(a button) no such button"], desk.Refused);
    }

    [Fact]
    public async Task Pressed_a_second_time_it_does_nothing()
    {
        var yes = await Asked(Nora, "ruom 20C 58%", Nora);
        await desk.Settle(Press(8, Nora, yes, Nora));
        desk.Posted();
        desk.Reopen();
        await Nothing(Press(9, Nora, yes, Nora), "This button was pressed before.");
        Assert.Equal(["(a button) pressed before"], desk.Refused);
    }

    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, false)]
    public async Task It_is_good_for_thirty_days(int seconds, bool isGood)
    {
        var yes = await Asked(Nora, "ruom 20C 58%", Nora);
        desk.Clock.Advance(TimeSpan.FromDays(30) + TimeSpan.FromSeconds(seconds));
        if (isGood)
        {
            await desk.Settle(Press(9, Nora, yes, Nora));
            Assert.Single(desk.Recorded);
            return;
        }

        await Nothing(Press(9, Nora, yes, Nora), TooOld);
        Assert.Equal(["(a button) too old a button"], desk.Refused);
    }

    [Theory]
    [InlineData("~AAAAAAAAAAAAAAAA")]
    [InlineData("~")]
    [InlineData("~'; drop table press; --")]
    [InlineData("room 20C 58%")]            // lines that record stand on no button
    [InlineData("ruom 20C 58%")]
    [InlineData("undo")]
    [InlineData("members forget Pia")]
    [InlineData("pia used 20 ml white")]
    public async Task Forged_it_does_nothing(string data)
    {
        await Nothing(Press(9, Nora, data, Nora), TooOld);
        Assert.EndsWith(" no such button", Assert.Single(desk.Refused), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_was_demoted_meanwhile_presses_in_vain()
    {
        var yes = await Asked(Nora, "members forget Pia", Nora, "Yes");
        desk.File.Write(session =>
        {
            var (nora, pia) = (session.Members.ByAccount(Nora)!, session.Members.ByAccount(Pia)!);
            var act = session.Acts.Begin(new("members", pia, "role", desk.Now));
            session.Members.Change(pia with { Role = Role.Steward }, act);
            session.Members.Change(nora with { Role = Role.Member }, act);
        });
        await Nothing(Press(9, Nora, yes, Nora), "Only a steward may do that: members. Nothing recorded.");
        Assert.NotNull(desk.File.Read(view => view.Members.ByAccount(Pia)));
        var row = desk.File.Read(view => view.Refusals.Last(10)).Single();
        Assert.Equal((Nora, Standing.Member, "members forget Pia", "for stewards"), (row.UserId, row.Standing, row.Words, row.Why));
    }

    [Fact]
    public async Task Who_was_demoted_takes_no_housekeeping_back()
    {
        await desk.Settle(desk.Message(1, Nora, 1, "role Pia steward"), desk.Message(2, Nora, 2, "role Nora member"));
        var undo = desk.Posted()[^1].Keys[0][0].Data;
        await Nothing(
            Press(9, Nora, undo, Nora),
            "That record is of the studio's housekeeping: a steward can take it back. Try   undo list");
        Assert.Equal(Role.Member, desk.File.Read(view => view.Members.ByAccount(Nora))!.Role);

        await desk.Settle(desk.Message(10, Pia, 10, "members refused"));
        var shown = desk.Posted()[^1].Plain;
        Assert.Contains("Nora, member then", shown, StringComparison.Ordinal);
        Assert.Contains("for stewards", shown, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_refused_is_shown_to_stewards_and_in_private_only()
    {
        await desk.Settle(
            desk.Message(1, Pia, 1, "members refused"),
            desk.Message(2, Group, 2, "/members refused", Nora),
            desk.Message(3, Stranger, 3, "let me in"));
        Assert.Equal(
            [
                "members refused for stewards",
                "/members refused in private only",
                "let me in not of the studio",
            ],
            desk.Refused);
        desk.Posted();

        await desk.Settle(desk.Message(4, Nora, 4, "members refused"));
        Assert.Equal(
            """
            3 refused, the newest first
            25 Nov 10:00, Nora, stranger 99:
            let me in  not of the studio
            25 Nov 10:00, Nora, steward then:
            /members refused  in private only
            25 Nov 10:00, Pia, member then:
            members refused  for stewards
            """.ReplaceLineEndings("\n"),
            desk.Posted()[^1].Plain);
    }

    [Fact]
    public async Task A_flood_of_presses_is_stopped_and_written_down_once()
    {
        await desk.Settle([.. Enumerable.Range(1, 30).Select(press => Press(press, Nora, "ratio 2:1 90 ml", Nora))]);
        Assert.Equal(20, desk.Wire.Presses.Count(notice => notice is null));
        Assert.Equal(10, desk.Wire.Presses.Count(notice => notice == "Slower, please: nothing was done."));
        Assert.Single(desk.Refused);
    }

    // Nothing is written, said or recorded but the notice.
    [Fact]
    public async Task The_next_page_lies_where_the_first_one_lay()
    {
        for (var piece = 1; piece <= 30; piece++)
        {
            desk.Clock.Advance(TimeSpan.FromMinutes(2));
            await desk.Settle(desk.Message(piece, Nora, piece, "pour 30cm panel bloom 6 colours"));
        }

        desk.Posted();
        await desk.Settle(desk.Message(100, Nora, 100, "pieces drying"));
        var next = desk.Posted()[^1].Keys.SelectMany(row => row).First(key => key.Label == "Next page").Data;
        await desk.Settle(Press(101, Nora, next, Nora));

        Assert.Equal(3, Assert.Single(desk.Posted()).Message);
    }

    [Fact]
    public async Task What_is_taken_back_says_so_where_it_was_told()
    {
        await desk.Settle(desk.Message(1, Nora, 1, "room 20C 58%"));
        var undo = desk.Posted()[^1].Keys[0][0].Data;
        await desk.Settle(Press(2, Nora, undo, Nora));
        Assert.Equal(3, Assert.Single(desk.Posted()).Message);
    }

    [Fact]
    public async Task What_another_button_asks_is_a_message_of_its_own()
    {
        var other = await Asked(Nora, "ratio 3:1 250 ml", Nora, "");
        await desk.Settle(Press(3, Nora, other, Nora));
        Assert.Null(Assert.Single(desk.Posted()).Message);
    }

    private async Task Nothing(JsonObject press, string notice)
    {
        var before = desk.Recorded;
        await desk.Settle(press);
        Assert.Equal(before, desk.Recorded);
        Assert.Empty(desk.Posted());
        Assert.Equal(notice, desk.Wire.Presses[^1]);
    }

    private async Task<string> Asked(long chat, string words, long by, string label = "Yes")
    {
        await desk.Settle(desk.Message(1, chat, 1, words, by));
        return desk.Posted()[^1].Keys.SelectMany(row => row)
            .First(key => key.Label.StartsWith(label, StringComparison.Ordinal)).Data;
    }

    private static JsonObject Press(int update, long chat, string data, long by) =>
        StandInUpdates.Press(update, chat, 3, $"p{update}", data, by);
}
