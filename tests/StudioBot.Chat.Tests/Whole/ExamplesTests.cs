using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>What help shows must work when it is sent, and fit the phone it is sent from.</summary>
public sealed class ExamplesTests
{
    public static TheoryData<string> Questions =>
        [.. Catalogue.Find().Forms.OfType<Ask>().SelectMany(form => form.Sheet.Examples)];

    public static TheoryData<string> Buttons =>
    [
        .. Catalogue.Find().Forms.OfType<Ask>().SelectMany(form => form.Sheet.Examples)
            .SelectMany(example => Sample.Answer(example)!.Buttons)
            .Select(button => button.Line)
            .Distinct(),
    ];

    [Theory]
    [MemberData(nameof(Questions))]
    public void An_example_is_answered(string example)
    {
        Assert.Equal("ask", Sample.Hear(example).Kind);
        Assert.False(Sample.Answer(example)!.IsTrouble, Sample.Answer(example)!.PlainText);
    }

    [Theory]
    [MemberData(nameof(Questions))]
    public void An_answer_fits_a_phone_held_in_a_gloved_hand(string example) => Fits(Sample.Answer(example)!);

    [Theory]
    [MemberData(nameof(Buttons))]
    public void A_button_is_a_message_that_records_or_is_answered_as_shortly(string line)
    {
        if (Sample.Listen(line) is Heard.Told)
        {
            return;     // what comes next for a piece: dry 17
        }

        Assert.Equal("ask", Sample.Hear(line).Kind);
        var reply = Sample.Answer(line)!;
        Assert.False(reply.IsTrouble, reply.PlainText);
        Fits(reply);
    }

    private static void Fits(Reply reply)
    {
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, $"{LineBudget.Of(reply)} lines:\n{reply.PlainText}");
        Assert.All(reply.Buttons, button => Assert.InRange(button.Label.Length, 1, 20));
        Assert.InRange(reply.Buttons.Count, 0, 6);
    }
}
