using StudioBot.Chat;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;

namespace StudioBot.Host.Tests.Turns;

public sealed class AnsweringTests : IDisposable
{
    private const long Mira = 7;
    private const long Stranger = 99;

    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile file = StudioFile.OpenInMemory();
    private readonly Answering answering = Studios.Answering();

    public AnsweringTests() => file.Write(session =>
    {
        SampleStudio.WriteInto(session);
        session.Members.AddAccount(Mira, session.Members.All().First(member => member.Name == "Mira").Id, Now);
    });

    [Fact]
    public void A_question_in_private_is_answered()
    {
        var outcome = To(Message("amounts 30cm panel bloom 6 colours"))!;
        Assert.True(outcome is { OnlyAsked: true, Recorded: false });
        Assert.Contains("900 cm²", outcome.Reply.PlainText, StringComparison.Ordinal); // 30 cm times 30 cm
    }

    [Theory]
    [InlineData("lunch at one?")]
    [InlineData("/help@another_bot")]
    [InlineData("")]
    public void A_group_s_own_talk_is_left_alone(string words) =>
        Assert.Null(To(Message(words) with { Kind = ChatKind.Group }));

    [Theory]
    [InlineData("/help")]
    [InlineData("/help@studio_bot")]
    public void A_slash_in_a_group_is_meant_for_us(string words) =>
        Assert.NotNull(To(Message(words) with { Kind = ChatKind.Group }));

    [Fact]
    public void What_is_told_is_recorded_by_its_author_at_the_moment_it_was_typed()
    {
        Assert.True(To(Message("room 20C 58%") with { At = Now.AddMinutes(-20) })!.Recorded);
        var act = file.Read(view => view.Acts.Recent(null, Now))[0];
        Assert.Equal(("room 20C 58%", "Mira", Now.AddMinutes(-20)), (act.Words, act.Author?.Name, act.WrittenAt));
    }

    [Fact]
    public void Somebody_else_s_word_is_not_recorded()
    {
        var outcome = To(Message("room 20C 58%") with { IsForwarded = true })!;
        Assert.Contains("Passed on", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.DoesNotContain("room 20C 58%", Recorded());
    }

    [Fact]
    public void A_question_that_was_passed_on_is_answered() => Assert.DoesNotContain(
        "Passed on",
        To(Message("amounts 30cm panel") with { IsForwarded = true })!.Reply.PlainText,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("/help")]
    [InlineData("/room 20C 58%")]
    public void Who_writes_as_the_group_is_told_why_there_is_no_answer(string words)
    {
        var outcome = To(Message(words) with { Kind = ChatKind.Group, UserId = 1087968824, Mask = Standing.Anonymous })!;
        Assert.Contains("Turn off anonymous", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.False(outcome.Recorded);
    }

    [Fact]
    public void A_message_without_words_in_private_is_not_met_with_silence() => Assert.NotNull(To(Message("")));

    [Fact]
    public void A_corrected_question_is_answered_anew()
    {
        var outcome = ToCorrected(Message("ratio 2:1 90 ml"))!;
        Assert.True(outcome.OnlyAsked);
        Assert.Contains("60 ml", outcome.Reply.PlainText, StringComparison.Ordinal); // two thirds of 90
    }

    [Fact]
    public void A_corrected_record_is_offered_where_nothing_was_recorded()
    {
        var outcome = ToCorrected(Message("room 20C 58%"))!;
        Assert.False(outcome.OnlyAsked);
        Assert.StartsWith("Nothing was recorded before.", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(("room 20C 58%", true), outcome.Reply.Buttons.Select(button => (button.Line, button.Records)).Single());
        Assert.DoesNotContain("room 20C 58%", Recorded());
    }

    [Fact]
    public void A_corrected_record_stays_and_shows_its_undo()
    {
        To(Message("room 20C 58%"));
        var outcome = ToCorrected(Message("room 25C 58%"))!;
        Assert.Contains("recorded as first sent", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("room 20C 58%", outcome.Reply.PlainText, StringComparison.Ordinal);
        var act = file.Read(view => view.Acts.Recent(null, Now))[0];
        Assert.Equal($"undo act {act.Id}", outcome.Reply.Buttons.Single().Line);

        To(Message(outcome.Reply.Buttons[0].Line) with { Id = 2 });
        Assert.StartsWith(
            "Nothing was recorded before.", ToCorrected(Message("room 25C 58%"))!.Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_button_of_the_first_answer_recorded_counts_as_recorded()
    {
        To(Message("room 20C 58%") with { Id = 9 });    // pressed under message 9, which answered message 1
        Assert.Contains(
            "recorded as first sent",
            ToCorrected(Message("room 25C 58%"), answer: 9)!.Reply.PlainText,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_corrected_photo_is_not_offered_without_it()
    {
        var outcome = ToCorrected(Message("note 17 big cells") with { Photo = "photo-1" })!;
        Assert.Contains("Send the photo anew", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Empty(outcome.Reply.Buttons);
    }

    [Fact]
    public void A_stranger_s_correction_is_not_answered() =>
        Assert.Null(ToCorrected(Message("room 20C 58%") with { UserId = Stranger }));

    [Fact]
    public void A_stranger_hears_one_line_in_twenty_four_hours_not_in_a_day_of_the_calendar()
    {
        // 23:30 UTC is half past midnight in Vienna: the next day.
        var late = new DateTimeOffset(2026, 11, 24, 22, 30, 0, TimeSpan.Zero);
        var outcome = To(Message("stock") with { UserId = Stranger, Chat = Stranger, At = late })!;
        Assert.Equal("Ask a steward of this studio for an invitation.", outcome.Reply.PlainText.Trim());
        Assert.False(outcome.IsSilent);
        Assert.True(To(Message("stock") with { UserId = Stranger, Chat = Stranger, At = late.AddHours(1) })!.IsSilent);
    }

    [Theory]
    [InlineData("room 20C 58%")]   // passed on
    [InlineData("")]
    public void A_stranger_hears_nothing_else_whatever_they_send(string words)
    {
        var outcome = To(Message(words) with { UserId = Stranger, Chat = Stranger, IsForwarded = true })!;
        Assert.Equal("Ask a steward of this studio for an invitation.", outcome.Reply.PlainText.Trim());
    }

    public void Dispose() => file.Dispose();

    private Outcome? To(ChatMessage message) => file.Write(session => answering.To(message, session));

    private Outcome? ToCorrected(ChatMessage message, long? answer = null) =>
        file.Write(session => answering.ToCorrected(message, answer, session));

    private List<string> Recorded() => [.. file.Read(view => view.Acts.Recent(null, Now)).Select(act => act.Words)];

    private static ChatMessage Message(string words) => new(Mira, ChatKind.Private, 1, Mira, "Mira", words, Now);
}
