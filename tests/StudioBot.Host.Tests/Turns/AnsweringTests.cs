using StudioBot.Chat;
using StudioBot.Host.Settings;
using StudioBot.Host.Telegram;
using StudioBot.Host.Turns;

namespace StudioBot.Host.Tests.Turns;

public sealed class AnsweringTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly InventedStudio invented = new(Practice());
    private readonly Answering answering;

    public AnsweringTests() =>
        answering = new Answering(new Conversation(Catalogue.Find()), invented, "studio_bot");

    [Fact]
    public void A_question_in_private_is_answered() =>
        Assert.True(answering.To(Message("amounts 30cm panel bloom 6 colours"))!.ToQuestion);

    [Theory]
    [InlineData("lunch at one?")]
    [InlineData("/help@another_bot")]
    [InlineData("")]
    public void A_group_s_own_talk_is_left_alone(string words) =>
        Assert.Null(answering.To(Message(words) with { Kind = ChatKind.Group }));

    [Theory]
    [InlineData("/help")]
    [InlineData("/help@studio_bot")]
    public void A_slash_in_a_group_is_meant_for_us(string words) =>
        Assert.NotNull(answering.To(Message(words) with { Kind = ChatKind.Group }));

    [Fact]
    public void Somebody_else_s_word_is_not_recorded() => Assert.Contains(
        "Passed on",
        answering.To(Message("used 20 ml white") with { IsForwarded = true })!.Reply.PlainText,
        StringComparison.Ordinal);

    [Fact]
    public void A_question_that_was_passed_on_is_answered() => Assert.DoesNotContain(
        "Passed on",
        answering.To(Message("amounts 30cm panel") with { IsForwarded = true })!.Reply.PlainText,
        StringComparison.Ordinal);

    [Fact]
    public void Who_writes_as_the_group_is_told_why_there_is_no_answer() => Assert.Contains(
        "Turn off anonymous",
        answering.To(Message("/help") with { Kind = ChatKind.Group, IsAnonymous = true })!.Reply.PlainText,
        StringComparison.Ordinal);

    [Fact]
    public void A_message_without_words_in_private_is_not_met_with_silence() =>
        Assert.NotNull(answering.To(Message("")));

    [Fact]
    public void The_studio_s_clock_is_that_of_its_zone() =>
        Assert.Equal(new DateTime(2026, 11, 25, 10, 0, 0), invented.Local(Now)); // Vienna in winter: one hour ahead

    public void Dispose() => invented.Dispose();

    private static ChatMessage Message(string words) => new(7, ChatKind.Private, 1, 7, "Nora", words, Now);

    private static StudioBot.Craft.Practice.TradePractice Practice() =>
        Assert.IsType<TradeReading.Read>(TradeSettings.Load(Path.Combine(AppContext.BaseDirectory, "config"))).Practice;
}
