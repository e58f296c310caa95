using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

/// <summary>What every answer owes to the hand that holds the phone.</summary>
internal static class Phone
{
    /// <summary>It fits without scrolling, and every button is a question the reader reads, or says that it records.</summary>
    public static void Fits(string words)
    {
        var reply = Sample.Answer(words)!;
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.All(reply.Buttons, button => Assert.Equal(KindOf(button), Sample.Hear(button.Line).Kind));
        Assert.All(
            reply.Buttons.Where(button => KindOf(button) == "ask"),
            button => Assert.False(Sample.Answer(button.Line)!.IsTrouble, button.Line));
    }

    /// <summary>What the reader is to make of a button: few under a question record.</summary>
    public static string KindOf(Button button) =>
        button.Label == "Reserve it" || button.Label.StartsWith("Ordered ", StringComparison.Ordinal) ? "write" : "ask";

    /// <summary>The words of the answer.</summary>
    public static string Says(string words) => Sample.Answer(words)!.PlainText;

    /// <summary>What the message is blamed for.</summary>
    public static string Blames(string words) => Sample.Hear(words).Error?.Word ?? "nothing";
}
