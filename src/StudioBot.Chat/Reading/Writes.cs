namespace StudioBot.Chat.Reading;

/// <summary>Several records in one message: under one word they are one, under two words they wait for one button.</summary>
internal static class Writes
{
    /// <summary>The reading of a message that holds more than one record; none where it holds one.</summary>
    public static Heard? Split(Message message, int start, (string Word, int Taken) first, IReadOnlyList<Command> forms)
    {
        if (!forms.Any(form => form.Records))
        {
            return null;
        }

        List<(int At, string Word, int Taken)> heads = [(start, first.Word, first.Taken)];
        var repeated = new HashSet<int>();
        for (var at = start + first.Taken + 1; at < message.Atoms.Count - 1; at++)
        {
            if (!IsBreak(message.Atoms[at - 1]) || message.WordAt(at) is not { } word || !message.Catalogue.Of(word.Word).Any(form => form.Records))
            {
                continue;
            }

            if (message.Catalogue.Of(word.Word)[0] == message.Catalogue.Of(heads[^1].Word)[0])
            {
                repeated.Add(at);
            }
            else
            {
                heads.Add((at, word.Word, word.Taken));
            }
        }

        if (heads.Count == 1)
        {
            return repeated.Count == 0 ? null : Sentence.Judge(Read(message, start, first.Taken, message.Atoms.Count, forms, repeated));
        }

        var drafts = heads.Select((head, i) => Read(message, head.At, head.Taken, i + 1 < heads.Count ? heads[i + 1].At : message.Atoms.Count,
            message.Catalogue.Of(head.Word), repeated)).ToList();
        if (drafts.Any(draft => draft.Slips.Count > 0 || !draft.Form.Records))
        {
            return drafts.All(draft => draft.Slips.Count > 0) || message.Atoms.Any(atom => atom.Kind == AtomKind.NewLine)
                ? Sentence.Judge(drafts.First(draft => draft.Slips.Count > 0 || !draft.Form.Records))
                : null;
        }

        var line = string.Join('\n', drafts.Select(draft => draft.Said.Line));
        return new Heard.Doubtful([.. drafts.Select(draft => draft.Said)], new Misread("", "two records in one message: both or neither", line), line);
    }

    private static PhraseDraft Read(Message message, int at, int taken, int to, IReadOnlyList<Command> forms, HashSet<int> without)
    {
        var end = to;
        while (end > at && end < message.Atoms.Count && IsBreak(message.Atoms[end - 1]))
        {
            end--;
        }

        var atoms = Enumerable.Range(at + taken, end - at - taken).Where(i => !without.Contains(i)).Select(i => message.Atoms[i]).ToList();
        return message.Read(forms, atoms, at + 1, end);
    }

    private static bool IsBreak(Atom atom) =>
        atom.Kind == AtomKind.NewLine || atom.IsWord("and", "then") || (atom.Kind == AtomKind.Mark && atom.Lower is ";" or "," or "." or "&");
}
