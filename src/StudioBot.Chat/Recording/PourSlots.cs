using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary>What is told of a pour with it or after it.</summary>
internal static class PourSlots
{
    /// <summary>What stayed in the cups: <c>left 40</c>.</summary>
    public static readonly AmountSlot Left = Of("left", "left 40");

    /// <summary>What ran off and was caught: <c>caught 55</c>.</summary>
    public static readonly AmountSlot Caught = Of("caught", "caught 55");

    private static AmountSlot Of(string word, string example) => new($"what was {word}", example)
    {
        Lead = word,
        Bare = Measure.Volume,
        Only = Measure.Volume,
        Key = word,
        MayBeNothing = true,
    };
}
