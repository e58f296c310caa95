namespace StudioBot.Chat.Reading;

/// <summary>
/// Finds which command a message means: by its first word, by a piece's number, by a sentence, by the nearest word.
/// </summary>
internal sealed class Sentence(Message message, bool isSlash)
{
    private readonly PieceTalk _pieces = new(message);

    private Catalogue Catalogue => message.Catalogue;

    private IReadOnlyList<Atom> Atoms => message.Atoms;

    /// <summary>What is meant; none where no word of the language is there.</summary>
    public Heard? Hear()
    {
        if (Atoms.Count == 0)
        {
            return null;
        }

        return Commanded() ?? (isSlash ? Misspelt(2) : Spoken());
    }

    // A near miss of one letter outranks a sentence's cues, which outrank a miss of two.
    private Heard? Spoken() => PieceFirst() ?? MemberFirst() ?? Misspelt(1) ?? Cued() ?? Misspelt(2) ?? Anywhere();

    private Heard? Commanded()
    {
        var start = message.Start;
        if (message.WordAt(start) is not { } word)
        {
            return null;
        }

        var forms = Catalogue.Of(word.Word);
        var behind = start + word.Taken;
        if (!message.IsQuestion)
        {
            return Writes.Split(message, start, word, forms) ?? Verdict.Of(message.Read(forms, behind, Atoms.Count));
        }

        if (forms.Any(KeepsQuestions))
        {
            return Verdict.Of(message.Read(forms, behind, Atoms.Count));
        }

        return forms.Where(form => !form.Records).ToList() is { Count: > 0 } asking
            ? Verdict.Of(message.Read(asking, behind, Atoms.Count))
            : AskedOfRecord(forms, behind);
    }

    private static bool KeepsQuestions(Command form) =>
        form.Sheet.Takes.Any(slot => slot is Values.TextSlot { KeepsQuestions: true });

    // A question bars recording: the record stands before another question, or its piece is shown, or it is agreed to.
    private Heard AskedOfRecord(IReadOnlyList<Command> forms, int behind) =>
        QuestionBehind(forms, behind)
        ?? _pieces.AskedOfAny()
        ?? Verdict.OnceAgreed(
            message.Read(forms, behind, Atoms.Count),
            "is followed by a question mark, so nothing is recorded unasked",
            Atoms[message.Start].Lower);

    // used 20 ml white what's left? The record stands; its answer shows the level.
    private Heard? QuestionBehind(IReadOnlyList<Command> forms, int from)
    {
        for (var at = from + 1; at < Atoms.Count; at++)
        {
            if (OpensSecondQuestion(Atoms[at]))
            {
                var draft = message.Read(forms, from, at);
                return draft.Slips.Count == 0 ? Verdict.Of(draft) : null;
            }
        }

        return null;
    }

    private static bool OpensSecondQuestion(Atom atom) => atom.Kind == AtomKind.Word
        && Fillers.OpensQuestion(atom.Lower)
        && !atom.IsWord("is", "are", "was", "has", "have");

    // 17 dry?, 17 sanded, 17 fisheyes lower left.
    private Heard? PieceFirst()
    {
        if (!_pieces.OpensLine)
        {
            return null;
        }

        return _pieces.IsAskedOfFirst ? _pieces.AskedOfFirst() : _pieces.Done() ?? Cued() ?? _pieces.Noted();
    }

    // Pia bought 1 L white: another's record is agreed to first.
    private Heard? MemberFirst()
    {
        var first = Atoms[message.Start];
        var behind = message.Start + 1;
        if (message.IsQuestion
            || first.NameOf(NameKind.Member) is not { } member
            || message.WordAt(behind) is not { } word)
        {
            return null;
        }

        if (Catalogue.Of(word.Word).Any(form => form.Sheet.IsOwnOnly))
        {
            return Verdict.OnlyTheirs(Catalogue.Of(word.Word)[0], member.Name);
        }

        List<Atom> turned = [first, .. Atoms.Skip(behind + word.Taken)];
        var draft = message.Read(Catalogue.Of(word.Word), turned, 0, Atoms.Count);
        return draft.Form.Records
            ? Verdict.OnceAgreed(draft, $"is somebody else: is this {member.Name}'s record?", member.Name)
            : Verdict.Of(draft);
    }

    private Heard? Cued()
    {
        if (BestCue() is not { } best)
        {
            return null;
        }

        if (best.Sheet.IsOwnOnly && Atoms[message.Start].NameOf(NameKind.Member) is { } member)
        {
            return Verdict.OnlyTheirs(best, member.Name);
        }

        var draft = message.Read([best], 0, Atoms.Count);
        return best.Records
            ? Verdict.OnceAgreed(draft, $"is read as {best.Sheet.Word}", draft.Said.Typed)
            : Verdict.Of(draft);
    }

    // The form whose cue says most; among equals the first.
    private Command? BestCue()
    {
        var seen = new Sightings(Atoms, message.Vocabulary);
        Command? best = null;
        var bestScore = 0;
        foreach (var form in Catalogue.Forms)
        {
            foreach (var cue in form.Records && message.IsQuestion ? [] : form.Sheet.Cues)
            {
                var score = cue.Score(seen);
                if (score > bestScore)
                {
                    (best, bestScore) = (form, score);
                }
            }
        }

        return best;
    }

    private Heard? Misspelt(int reach)
    {
        var first = Atoms[message.Start];
        if (!MayBeMisspelt(first))
        {
            return null;
        }

        var nearest = Nearest.All(first.Lower, Catalogue.Words, first.Lower.Length < 4 ? 1 : reach);
        if (nearest.Count == 0)
        {
            return null;
        }

        // Two words as near: the one whose command can take the rest of the line.
        var (right, draft) = nearest
            .Select(word => (Word: word, Draft: message.Read(Catalogue.Of(word), message.Start + 1, Atoms.Count)))
            .OrderBy(one => one.Draft.Slips.Count > 0)
            .ThenByDescending(one => one.Draft.Fitting)
            .First();
        if (draft is { Form.Records: true, Slips.Count: > 0 } && Nearest.Distance(first.Lower, right, reach) > 1)
        {
            // Two slips away and the rest does not fit either: it was another word.
            return null;
        }

        draft.Said.NoteList.Insert(0, $"“{first.Lower}” taken as {right}");
        return draft.Form.Records && draft.Slips.Count == 0
            ? Verdict.OnceAgreed(draft, $"is no command; {right} is the nearest", first.Lower)
            : Verdict.Of(draft);
    }

    private static bool MayBeMisspelt(Atom first) => first is { Kind: AtomKind.Word, Lower.Length: >= 2 }
        && !Fillers.Holds(first.Lower)
        && !Fillers.OpensQuestion(first.Lower);

    // 6 colours bloom on my 30cm panel, amounts?
    private Heard? Anywhere()
    {
        for (var at = 0; at < Atoms.Count; at++)
        {
            if (Atoms[at].Kind == AtomKind.Word && !Fillers.Holds(Atoms[at].Lower)
                && Catalogue.Of(Atoms[at].Lower).Where(form => !form.Records).ToList() is { Count: > 0 } forms)
            {
                List<Atom> others = [.. Atoms.Take(at), .. Atoms.Skip(at + 1)];
                var draft = message.Read(forms, others, 0, Atoms.Count);
                return draft.Slips.Count == 0 || !draft.Said.IsEmpty ? Verdict.Of(draft) : null;
            }
        }

        return null;
    }
}
