using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

/// <summary>What every answer owes to the hand that holds the phone.</summary>
internal static class Phone
{
    /// <summary>It fits without scrolling, and every button is a question the reader reads.</summary>
    public static void Fits(string words)
    {
        var reply = Sample.Answer(words)!;
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.All(reply.Buttons, button => Assert.Equal("ask", Sample.Hear(button.Line).Kind));
        Assert.All(reply.Buttons, button => Assert.False(Sample.Answer(button.Line)!.IsTrouble, button.Line));
    }

    /// <summary>The words of the answer.</summary>
    public static string Says(string words) => Sample.Answer(words)!.PlainText;

    /// <summary>What the message is blamed for.</summary>
    public static string Blames(string words) => Sample.Hear(words).Error?.Word ?? "nothing";
}
