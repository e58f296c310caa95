using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Tests.Support;

/// <summary>Words read into a form that takes one slot only.</summary>
internal static class OneSlot
{
    /// <summary>What was understood, as <c>key=value; key=value</c>; or the slip, as <c>“word” why</c>.</summary>
    public static string Read(Slot slot, string words, UnitSystem units = UnitSystem.Metric)
    {
        var draft = Draft(slot, words, units);
        if (draft.Slips.Count > 0)
        {
            return $"“{draft.Slips[0].Word}” {draft.Slips[0].Why}";
        }

        return string.Join("; ", draft.Said.Understood.Select(meaning => $"{meaning.Key}={meaning.Value}"));
    }

    /// <summary>The words in which the slot says its value back.</summary>
    public static string? Say(Slot slot, string words) => slot.Say(Draft(slot, words, UnitSystem.Metric).Said);

    private static PhraseDraft Draft(Slot slot, string words, UnitSystem units)
    {
        var catalogue = Catalogue.Find();
        var who = new Speaker("Mira", IsSteward: true, units);
        var context = new ReadingContext(Sample.Studio.Words, who, Sample.Now, catalogue.Words);
        var atoms = Atomiser.Join(Characters.Plain(words), context.Vocabulary);
        return PhraseReader.Read(new Form(slot), words, words, atoms, context);
    }

    private sealed class Form(Slot slot) : Ask
    {
        public override CommandSheet Sheet { get; } = new("form", Room.Asking, "Takes one slot.", [slot], ["form"]);

        internal override Reply Answer(Phrase said, Turn turn, Studio studio) => throw new NotSupportedException("It is only read.");
    }
}
