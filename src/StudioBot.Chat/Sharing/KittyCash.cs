using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Sharing;

/// <summary>Cash that goes out of the kitty: no more than lies in it, unless that is agreed to.</summary>
internal static class KittyCash
{
    /// <summary>The word for it.</summary>
    public const string Word = "kitty";

    /// <summary>From kitty.</summary>
    public static ChoiceSlot From() => new("from", "from kitty", [Word]) { Leads = ["from"] };

    /// <summary>What lies in it by the books.</summary>
    public static Money In(Writing writing) => Purses.Of(writing.Studio).InKitty;

    /// <summary>The question where the books know of less in it; none where it is there, or was agreed to.</summary>
    /// <param name="sum">What goes out.</param>
    /// <param name="line">The message, which the button repeats.</param>
    /// <param name="writing">The record.</param>
    public static Reply? Against(Money sum, string line, Writing writing)
    {
        var there = In(writing);
        if (sum <= there || writing.Turn.IsAgreed)
        {
            return null;
        }

        var isGroup = writing.Turn.Chat == ChatKind.Group;
        var holds = isGroup ? "less than that" : there < default(Money) ? $"{there}".Replace('-', '−') : $"{there}";
        return new Reply(
            [
                new Block.Headline($"By the books the kitty holds {holds}. Nothing recorded."),
                new Block.Line($"If {sum} did come out of it, agree; else say who paid:"),
                new Block.Sample(isGroup ? "/kitty" : "kitty"),
            ],
            [new Button("It was in it", line) { Agrees = true }])
        {
            IsTrouble = true,
        };
    }
}
