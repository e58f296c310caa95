using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

/// <summary>Flow, compare, quote, workshop, again, why and help, with all that stands behind their buttons.</summary>
public sealed class PhoneTests
{
    private static readonly string[] Words = ["flow", "compare", "quote", "workshop", "again", "why", "help"];

    public static TheoryData<string> Examples =>
        [.. Catalogue.Find().Forms.Where(form => Words.Contains(form.Sheet.Word)).SelectMany(form => form.Sheet.Examples)];

    [Theory]
    [MemberData(nameof(Examples))]
    [InlineData("quote set of 4 coasters bloom 1 coat")]
    [InlineData("workshop sat 10:00 8 people 2 tiles 10cm 5 colours 2:1 2mm")]
    [InlineData("workshop 8 people 30cm panel resin")]
    [InlineData("flow zahn2 27 s")]
    [InlineData("again 3 on 3 x 10cm tile")]
    [InlineData("compare 5,50/10g 1 tsp per 20 ml vs 18,00/50g 0,3 tsp per 20 ml")]
    public void Answers_fit_a_phone_and_their_buttons_are_questions(string words)
    {
        var reply = Sample.Answer(words)!;

        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, $"{LineBudget.Of(reply)} lines:\n{reply.PlainText}");
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.All(reply.Buttons, button => Assert.Equal(Phone.KindOf(button), Sample.Hear(button.Line).Kind));
        Assert.True(reply.Buttons.Count <= 6);
    }
}
