namespace StudioBot.Chat.Reading;

/// <summary>What a draft amounts to: a question, a record, a doubt, or a slip that is explained.</summary>
internal static class Verdict
{
    /// <summary>As it stands: without slips and doubts it is answered or recorded.</summary>
    public static Heard Of(PhraseDraft draft) => draft switch
    {
        { Slips.Count: > 0 } => Unread(draft),
        { Form.Records: false } => new Heard.Asked(draft.Said),
        { Doubts: [var first, ..] } => Doubtful([draft.Said], first.Word, first.Why),
        _ => new Heard.Told(draft.Said),
    };

    /// <summary>Recorded only once its author agrees.</summary>
    /// <param name="draft">What would be recorded.</param>
    /// <param name="why">What is not plain, without the word.</param>
    /// <param name="word">The word that is not plain, as typed; empty where it is the whole.</param>
    public static Heard OnceAgreed(PhraseDraft draft, string why, string word) =>
        draft.Slips.Count > 0 ? Unread(draft) : Doubtful([draft.Said], word, why);

    /// <summary>What somebody did that only they can tell.</summary>
    public static Heard OnlyTheirs(Command form, string member) => new Heard.Unread(
        form.Sheet.Word,
        new Misread(member, "is somebody else: who paid records it", form.Sheet.Examples[0]));

    /// <summary>These records wait for one button.</summary>
    public static Heard.Doubtful Doubtful(IReadOnlyList<Phrase> said, string word, string why)
    {
        var line = string.Join('\n', said.Select(phrase => phrase.Line));
        return new Heard.Doubtful(said, new Misread(word, why, line), line);
    }

    private static Heard.Unread Unread(PhraseDraft draft)
    {
        var slip = draft.Slips.MinBy(one => one.Start)!;
        var example = slip.Try ?? draft.Form.Sheet.Examples[0];
        return new Heard.Unread(
            draft.Form.Sheet.Word, new Misread(slip.Word, slip.Why, example) { Choices = slip.Choices });
    }
}
