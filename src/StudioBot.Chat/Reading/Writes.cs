namespace StudioBot.Chat.Reading;

/// <summary>
/// Several records in one message: under one word they are one, under two words they wait for one button.
/// </summary>
internal static class Writes
{
    /// <summary>The reading of a message that holds more than one record; none where it holds one.</summary>
    public static Heard? Split(
        Message message, int start, (string Word, int Taken) first, IReadOnlyList<Command> forms)
    {
        if (!forms.Any(form => form.Records))
        {
            return null;
        }

        var (heads, repeated) = Heads(message, new Head(start, first.Taken, forms));
        return heads.Count switch
        {
            > 1 => Several(message, heads, repeated),
            _ when repeated.Count > 0 => Verdict.Of(Read(message, heads[0], message.Atoms.Count, repeated)),
            _ => null,
        };
    }

    // Where each record begins, and where a word repeats the one before: used 20 ml white, used 5 ml red.
    private static (List<Head> Heads, HashSet<int> Repeated) Heads(Message message, Head first)
    {
        List<Head> heads = [first];
        HashSet<int> repeated = [];
        for (var at = first.At + first.Taken + 1; at < message.Atoms.Count - 1; at++)
        {
            if (!IsBreak(message.Atoms[at - 1]) || message.WordAt(at) is not { } word)
            {
                continue;
            }

            var forms = message.Catalogue.Of(word.Word);
            if (!forms.Any(form => form.Records))
            {
                continue;
            }

            if (forms[0] == heads[^1].Forms[0])
            {
                repeated.Add(at);
            }
            else
            {
                heads.Add(new Head(at, word.Taken, forms));
            }
        }

        return (heads, repeated);
    }

    // All or none: one that can't be read holds back the others; but in one line its words may be the first's remark.
    private static Heard? Several(Message message, List<Head> heads, HashSet<int> repeated)
    {
        var ends = heads.Skip(1).Select(head => head.At).Append(message.Atoms.Count);
        var drafts = heads.Zip(ends, (head, end) => Read(message, head, end, repeated)).ToList();
        if (drafts.FirstOrDefault(draft => draft.Slips.Count > 0 || !draft.Form.Records) is not { } wrong)
        {
            return Verdict.Doubtful(
                [.. drafts.Select(draft => draft.Said)], "", "two records in one message: both or neither");
        }

        var isInLines = message.Atoms.Any(atom => atom.Kind == AtomKind.NewLine);
        return isInLines || drafts.All(draft => draft.Slips.Count > 0) ? Verdict.Of(wrong) : null;
    }

    private static PhraseDraft Read(Message message, Head head, int to, HashSet<int> without)
    {
        var end = to;
        while (end > head.At && end < message.Atoms.Count && IsBreak(message.Atoms[end - 1]))
        {
            end--;
        }

        var behind = head.At + head.Taken;
        var atoms = Enumerable.Range(behind, end - behind)
            .Where(at => !without.Contains(at))
            .Select(at => message.Atoms[at])
            .ToList();
        return message.Read(head.Forms, atoms, head.At + 1, end);
    }

    private static bool IsBreak(Atom atom) => atom.Kind == AtomKind.NewLine
        || atom.IsWord("and", "then")
        || atom is { Kind: AtomKind.Mark, Lower: ";" or "," or "." or "&" };

    // A command word, how many atoms it takes, and the forms it begins.
    private sealed record Head(int At, int Taken, IReadOnlyList<Command> Forms);
}
