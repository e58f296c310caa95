using StudioBot.Chat.Pings;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Reading.Values;

/// <summary>What the bot says by itself, to be switched off or on: <c>mute torch and drips</c>.</summary>
/// <param name="lead">Mute or unmute.</param>
internal sealed class PingsSlot(string lead) : Slot<IReadOnlyList<PingKind>>("pings", $"{lead} torch")
{
    internal override IEnumerable<string> Lexicon =>
        PingCatalogue.All.Select(ping => ping.Sheet.Word).Append(lead).Where(word => word.Length > 3);

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this) || !draft.Atoms[at].IsWord(lead))
        {
            return 0;
        }

        List<PingKind> kinds = [];
        var taken = 1;
        var next = draft.Past(at + 1, "the");
        while (draft.At(next) is { } atom && Kind(atom) is { } kind)
        {
            kinds.Add(kind);
            taken = next + 1 - at;
            next = draft.Past(next + 1, "and", "the");
        }

        if (kinds.Count > 0)
        {
            draft.Said.Put(this, kinds);
            return taken;
        }

        var known = string.Join(", ", PingCatalogue.All.Select(ping => ping.Sheet.Word));
        if (draft.At(next) is null)
        {
            draft.Slip(at, 1, $"needs one of {known}", $"{draft.Form.Sheet.Word} {Example}");
            return 1;
        }

        draft.Slip(next, 1, $"is none of {known}", $"{draft.Form.Sheet.Word} {Example}");
        return next + 1 - at;
    }

    internal override IEnumerable<Meaning> Means(IReadOnlyList<PingKind> value) =>
        [new(lead, string.Join('|', value.Select(Word)))];

    internal override string Say(IReadOnlyList<PingKind> value) => $"{lead} {string.Join(' ', value.Select(Word))}";

    /// <summary>The word of a kind.</summary>
    public static string Word(PingKind kind) => PingCatalogue.Of(kind)!.Sheet.Word;

    private static PingKind? Kind(Atom atom) => PingCatalogue.All
        .Where(ping => atom.IsWord(ping.Sheet.Word))
        .Select(ping => (PingKind?)ping.Sheet.Kind)
        .FirstOrDefault();
}
