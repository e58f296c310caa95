using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>Messages that nobody means to send: a clear answer in private, silence in the group.</summary>
public sealed class OddMessagesTests
{
    private const string Zero = "\u200b";
    private const string RightToLeft = "\u202e";

    public static TheoryData<string> Odd =>
    [
        "", " ", "\n", ".", "???", "🙂", "\\", "/", "//", "@studio_bot",
        new string('A', 5000), string.Join(' ', Enumerable.Repeat("amounts 30cm panel", 300)),
        Zero, $"am{Zero}ounts", RightToLeft + "30cm panel", "كم أحتاج",
        "<b>amounts</b>", "&lt;", "`amounts`", "*bold* _it_",
    ];

    [Theory]
    [MemberData(nameof(Odd))]
    public void In_private_each_gets_one_short_answer(string words)
    {
        var reply = Sample.Answer(words)!;
        Assert.NotEmpty(reply.PlainText);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
    }

    [Theory]
    [MemberData(nameof(Odd))]
    public void In_the_group_none_is_taken_for_a_message_to_the_bot(string words)
    {
        if (words != "@studio_bot")
        {
            Assert.Null(Sample.Answer(words, ChatKind.Group));
        }
    }

    [Fact]
    public void Zero_width_and_direction_signs_around_a_message_do_no_harm() =>
        Assert.Equal(
            Sample.Answer("ratio 3:1 250 ml")!.PlainText,
            Sample.Answer(RightToLeft + Zero + "ratio 3:1 250 ml" + Zero)!.PlainText);

    [Fact]
    public void A_zero_width_sign_inside_a_number_is_not_joined_in_silence()
    {
        var heard = Sample.Hear($"ratio 3:1 2{Zero}50 ml");
        Assert.Equal("error", heard.Kind);
        Assert.Contains("can't be seen", heard.Error!.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Markup_comes_back_as_the_letters_it_is()
    {
        var reply = Sample.Answer("amounts 30cm <b>panel</b> splotch")!;
        Assert.Contains("<b>panel</b>", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_of_five_thousand_letters_is_quoted_shortened() =>
        Assert.True(Sample.Answer(new string('A', 5000))!.PlainText.Length < 200);
}
