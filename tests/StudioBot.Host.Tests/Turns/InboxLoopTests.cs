using System.Text.Json.Nodes;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Turns;

public sealed class InboxLoopTests : IDisposable
{
    private const long Nora = Desk.Nora;
    private const long Pia = Desk.Pia;
    private const long Group = StandInUpdates.GroupChat;

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public async Task Each_message_gets_its_answer_in_its_chat_s_order()
    {
        await desk.Settle(
            desk.Message(1, Nora, 1, "room 20C 58%"),
            desk.Message(2, Nora, 2, "room cupboard 23C 45%"),
            desk.Message(3, Nora, 3, "ratio 3:1 250 ml"));
        Assert.Equal(["Studio: 20 °C, 58 %.", "Cupboard: 23 °C, 45 %.", "250 ml at 3:1 by volume"], Posted(first: 3));
        Assert.Equal(["room 20C 58%", "room cupboard 23C 45%"], desk.Recorded);
    }

    [Fact]
    public async Task Stored_and_killed_before_the_answer_it_is_answered_once_after_the_restart()
    {
        desk.Store(desk.Message(1, Nora, 1, "room 20C 58%"));
        desk.Reopen();
        desk.Store(desk.Message(1, Nora, 1, "room 20C 58%"), desk.Message(9, Nora, 1, "room 20C 58%"));
        await desk.Settle();
        desk.Reopen();
        await desk.Settle();
        Assert.Equal(["room 20C 58%"], desk.Recorded);
        Assert.Single(desk.Posted());
    }

    [Fact]
    public async Task Killed_before_the_commit_nothing_of_it_stands_and_after_the_restart_all_of_it_once()
    {
        desk.Store(desk.Message(1, Nora, 1, "room 20C 58%"));
        desk.Break(true);
        var row = desk.File.Write(session => session.Inbox.Next())[0];
        Assert.Throws<InvalidOperationException>(() => desk.Clerk().Settle(row, desk.Now));
        desk.Reopen();
        Assert.Empty(desk.Recorded);
        Assert.Empty(desk.Posted());

        await desk.Settle();
        Assert.Equal(["room 20C 58%"], desk.Recorded);
        Assert.Single(desk.Posted());
    }

    [Fact]
    public async Task What_breaks_is_tried_three_times_apologised_for_once_and_parked()
    {
        desk.Break(true, true, true);
        await desk.Settle(desk.Message(1, Nora, 1, "room 20C 58%"), desk.Message(2, Nora, 2, "room 21C 50%"));
        Assert.Equal(4, desk.Tries);
        var words = Posted(first: 3);
        Assert.Matches("^That broke here, not at your end. Nothing recorded. Mark [A-Z2-9]{3}.$", words[0]);
        Assert.Equal("Studio: 21 °C, 50 %.", words[1]);
        Assert.Matches("^A message from Nora broke me three times and is left unanswered. Mark [A-Z2-9]{3}", words[2]);
        Assert.Equal(["room 21C 50%"], desk.Recorded);
        Assert.Single(desk.File.Write(session => session.Inbox.AllParked()));
    }

    [Fact]
    public async Task What_breaks_in_one_chat_holds_up_no_other()
    {
        // In each round the first row of each chat is tried: hers after his first try, before his others.
        desk.Break(true, false, true, true);
        await desk.Settle(desk.Message(1, Nora, 1, "room 20C 58%"), desk.Message(2, Pia, 2, "room 21C 50%"));
        Assert.Equal(["room 21C 50%"], desk.Recorded);
        Assert.Equal(4, desk.Tries);
    }

    [Fact]
    public async Task What_broke_once_is_done_all_the_same()
    {
        desk.Break(true);
        await desk.Settle(desk.Message(1, Nora, 1, "room 20C 58%"));
        Assert.Equal(["room 20C 58%"], desk.Recorded);
        Assert.Empty(desk.File.Write(session => session.Inbox.AllParked()));
    }

    [Fact]
    public async Task An_update_that_can_t_be_read_is_parked_too()
    {
        await desk.Settle(new JsonObject { ["update_id"] = 1, ["message"] = new JsonObject { ["message_id"] = "x" } });
        Assert.Single(desk.File.Write(session => session.Inbox.AllParked()));
        Assert.StartsWith("A message that came broke me", Posted(first: 1)[0], StringComparison.Ordinal);

        // Others that break the same day are told by that one.
        await desk.Settle(new JsonObject { ["update_id"] = 2, ["message"] = new JsonObject { ["message_id"] = "x" } });
        Assert.Equal(2, desk.File.Write(session => session.Inbox.AllParked()).Count);
        Assert.Empty(desk.Posted());
    }

    [Fact]
    public async Task Silence_is_settled_without_a_word()
    {
        await desk.Settle(desk.Message(1, Group, 1, "lunch?", Nora));
        Assert.Empty(desk.Posted());
        Assert.Empty(desk.File.Write(session => session.Inbox.Next()));
    }

    [Fact]
    public async Task In_a_group_the_answer_points_at_its_question()
    {
        await desk.Settle(desk.Message(1, Group, 31, "/help", Nora), desk.Message(2, Nora, 5, "help"));
        Assert.Equal([31L, null], desk.Posted().Select(letter => letter.ReplyTo));
    }

    [Fact]
    public async Task A_corrected_question_is_answered_in_the_place_of_its_first_answer()
    {
        await desk.Settle(
            desk.Message(1, Nora, 1, "ratio 3:1 250 ml"), StandInUpdates.Edit(2, Nora, 1, "ratio 2:1 90 ml", 10));
        var letters = desk.Posted();
        Assert.Contains("60 ml", letters[1].Plain, StringComparison.Ordinal); // two thirds of 90
        Assert.Equal([null, $"answer {Nora} 1 0"], letters.Select(letter => letter.InPlaceOf));
    }

    [Fact]
    public async Task A_corrected_record_changes_nothing_and_says_so()
    {
        await desk.Settle(
            desk.Message(1, Nora, 1, "room 20C 58%"), StandInUpdates.Edit(2, Nora, 1, "room 25C 58%", 10));
        var letter = desk.Posted()[1];
        Assert.Contains("recorded as first sent", letter.Plain, StringComparison.Ordinal);
        Assert.Null(letter.InPlaceOf);
        Assert.Equal(["room 20C 58%"], desk.Recorded);
    }

    [Fact]
    public async Task A_record_corrected_from_what_could_not_be_read_is_recorded_by_its_button()
    {
        await desk.Settle(
            desk.Message(1, Nora, 1, "roooooom 20C 58%"), StandInUpdates.Edit(2, Nora, 1, "room 20C 58%", 10));
        Assert.Empty(desk.Recorded);
        var offered = desk.Posted()[1];
        Assert.StartsWith("Nothing was recorded before.", offered.Plain, StringComparison.Ordinal);

        await desk.Settle(StandInUpdates.Press(3, Nora, 3, "p1", KeyOf(offered, "Yes"), Nora));
        Assert.Equal(["room 20C 58%"], desk.Recorded);
    }

    [Theory]
    [InlineData("room 20C 58%", "ratio 2:1 90 ml")] // what recorded stays above its Undo
    [InlineData("", "ratio 2:1 90 ml")]             // never stored: nothing stands there to be replaced
    public async Task A_correction_that_asks_is_not_put_where_no_question_was(string first, string then)
    {
        if (first.Length > 0)
        {
            await desk.Settle(desk.Message(1, Nora, 1, first));
        }

        desk.Posted();
        await desk.Settle(StandInUpdates.Edit(2, Nora, 1, then, 10));
        Assert.Empty(desk.Posted());
    }

    [Fact]
    public async Task A_button_that_asks_answers_as_often_as_it_is_pressed()
    {
        await desk.Settle(
            StandInUpdates.Press(1, Nora, 3, "p1", "ratio 2:1 90 ml", Nora),
            StandInUpdates.Press(2, Nora, 3, "p2", "ratio 2:1 90 ml", Nora));
        Assert.All(desk.Posted(), letter => Assert.Contains("60 ml", letter.Plain, StringComparison.Ordinal));
        Assert.Equal([null, null], desk.Wire.Presses);
    }

    [Fact]
    public async Task A_button_that_records_is_good_once()
    {
        await desk.Settle(desk.Message(1, Group, 1, "/room 20C 58%", Pia));
        var undo = KeyOf(Assert.Single(desk.Posted()), "Undo");
        Assert.StartsWith("=", undo, StringComparison.Ordinal);      // a key, whose outcome takes the place of the message

        await desk.Settle(
            StandInUpdates.Press(3, Group, 3, "p2", undo, Pia), StandInUpdates.Press(4, Group, 3, "p3", undo, Pia));
        Assert.Empty(desk.Recorded);
        Assert.Equal("Taken back.", Posted(first: 1)[0]);
        Assert.Equal(
            [
                null,
                "This button was pressed before.",
            ],
            desk.Wire.Presses);
    }

    [Fact]
    public async Task A_steward_may_press_undo_in_the_group_and_who_may_not_leaves_it_good()
    {
        await desk.Settle(desk.Message(1, Group, 1, "/room 20C 58%", Nora));
        var undo = KeyOf(Assert.Single(desk.Posted()), "Undo");
        await desk.Settle(StandInUpdates.Press(2, Group, 3, "p1", undo, Pia));
        Assert.Single(desk.Recorded);
        await desk.Settle(StandInUpdates.Press(3, Group, 3, "p2", undo, Nora));
        Assert.Empty(desk.Recorded);

        await desk.Settle(desk.Message(4, Group, 4, "/room 21C 58%", Pia));
        undo = KeyOf(desk.Posted()[^1], "Undo");
        await desk.Settle(StandInUpdates.Press(5, Group, 5, "p3", undo, Nora));
        Assert.Empty(desk.Recorded);
    }

    [Fact]
    public async Task A_line_that_records_is_not_taken_from_a_button_that_carries_it()
    {
        await desk.Settle(desk.Message(1, Nora, 1, "room 20C 58%"));
        var data = Assert.Single(desk.Posted()).Keys.SelectMany(row => row).Select(key => key.Data);
        Assert.DoesNotContain(data, line => line.StartsWith("undo", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_button_that_agrees_records_what_was_doubted()
    {
        await desk.Settle(desk.Message(1, Nora, 1, "ruom 20C 58%"));
        Assert.Empty(desk.Recorded);
        var asked = Assert.Single(desk.Posted());
        Assert.StartsWith("Nothing recorded yet.", asked.Plain, StringComparison.Ordinal);

        await desk.Settle(StandInUpdates.Press(2, Nora, 3, "p1", KeyOf(asked, "Yes"), Nora));
        Assert.Equal("Studio: 20 °C, 58 %.", Posted(first: 1)[0]);
        Assert.Equal(["room 20C 58%"], desk.Recorded);
    }

    [Fact]
    public async Task A_button_is_not_good_in_another_chat()
    {
        await desk.Settle(desk.Message(1, Nora, 1, "room 20C 58%"));
        var undo = KeyOf(Assert.Single(desk.Posted()), "Undo");
        await desk.Settle(StandInUpdates.Press(2, Group, 3, "p1", undo, Nora));
        Assert.Equal(["room 20C 58%"], desk.Recorded);
        Assert.Equal(["This button is too old. Send the message again."], desk.Wire.Presses);
    }

    [Theory]
    [InlineData("~AAAAAAAAAAAAAAAA")]
    [InlineData("~")]
    [InlineData("~'; drop table press; --")]
    public async Task A_forged_key_does_nothing(string data)
    {
        await desk.Settle(StandInUpdates.Press(1, Nora, 3, "p1", data, Nora));
        Assert.Empty(desk.Posted());
        Assert.Empty(desk.Recorded);
        Assert.Equal(["This button is too old. Send the message again."], desk.Wire.Presses);
    }

    private List<string> Posted(int first)
    {
        var words = desk.Posted().Select(letter => letter.Plain.Split('\n')[0]).ToList();
        Assert.Equal(first, words.Count);
        return words;
    }

    private static string KeyOf(Letter letter, string label) =>
        letter.Keys.SelectMany(row => row).First(key => key.Label.StartsWith(label, StringComparison.Ordinal)).Data;
}
