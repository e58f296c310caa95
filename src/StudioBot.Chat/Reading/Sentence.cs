namespace StudioBot.Chat.Reading;

/// <summary>Finds which command a message means: by its first word, by a piece's number, by a sentence, by the nearest word.</summary>
internal sealed class Sentence(Message message, Catalogue catalogue, bool isSlash)
{
    private IReadOnlyList<Atom> Atoms => message.Atoms;

    // A question bars recording, wherever its mark or its word stands.
    private bool IsQuestion => Atoms.Any(atom => atom.IsMark("?"))
        || (Atoms[message.Start].Kind == AtomKind.Word && Fillers.OpensQuestion(Atoms[message.Start].Lower) && message.WordAt(message.Start) is null);

    /// <summary>What is meant; none where no word of the language is there.</summary>
    public Heard? Hear()
    {
        if (Atoms.Count == 0)
        {
            return null;
        }

        return Commanded() ?? (isSlash
            ? Misspelt(2)
            : PieceFirst() ?? MemberFirst() ?? Misspelt(1) ?? Cued() ?? Misspelt(2) ?? Anywhere());
    }

    private Heard? Commanded()
    {
        var start = message.Start;
        if (message.WordAt(start) is not { } word)
        {
            return null;
        }

        var forms = catalogue.Of(word.Word);
        if (!IsQuestion)
        {
            return Writes.Split(message, start, word, forms) ?? Judge(message.Read(forms, start + word.Taken, Atoms.Count));
        }

        if (forms.Any(form => form.Sheet.Takes.Any(slot => slot is Values.TextSlot { KeepsQuestions: true })))
        {
            return Judge(message.Read(forms, start + word.Taken, Atoms.Count));
        }

        var asking = forms.Where(form => !form.Records).ToList();
        if (asking.Count > 0)
        {
            return Judge(message.Read(asking, start + word.Taken, Atoms.Count));
        }

        return QuestionBehind(forms, start + word.Taken) ?? AskedOfPiece() ?? Agreed(message.Read(forms, start + word.Taken, Atoms.Count),
            "is followed by a question mark, so nothing is recorded unasked", Atoms[start].Lower);
    }

    // used 20 ml white what's left? The record stands; its answer shows the level.
    private Heard? QuestionBehind(IReadOnlyList<Command> forms, int from)
    {
        for (var at = from + 1; at < Atoms.Count; at++)
        {
            if (Atoms[at].Kind == AtomKind.Word && Fillers.OpensQuestion(Atoms[at].Lower) && Atoms[at].Lower is not ("is" or "are" or "was" or "has" or "have"))
            {
                var draft = message.Read(forms, from, at);
                return draft.Slips.Count == 0 ? Judge(draft) : null;
            }
        }

        return null;
    }

    private Heard? AskedOfPiece()
    {
        var number = Atoms.FirstOrDefault(atom => atom.IsNumber && message.Vocabulary.Pieces.Contains((int)Math.Clamp(atom.Value, 0, int.MaxValue)));
        return number is null ? null : Judge(message.Read(catalogue.Of("piece").Where(form => !form.Records).ToList(), [number], 0, Atoms.Count));
    }

    private Heard? PieceFirst()
    {
        var number = Atoms[message.Start];
        if (!number.IsNumber || !number.IsWhole || number.Flaw != NumberFlaw.None || IsCount(message.Start))
        {
            return null;
        }

        var rest = Atoms.Skip(message.Start + 1).ToList();
        if (IsQuestion || rest.All(atom => atom.Kind == AtomKind.Mark))
        {
            return IsQuestion && !message.Vocabulary.Pieces.Contains((int)Math.Clamp(number.Value, 0, int.MaxValue))
                ? null
                : Judge(message.Read(catalogue.Of("piece").Where(form => !form.Records).ToList(), [number], 0, Atoms.Count));
        }

        if (Verb(message.Start + 1) is { } verb)
        {
            List<Atom> turned = [number, .. Atoms.Skip(message.Start + 1).Take(verb.At - message.Start - 1), .. Atoms.Skip(verb.At + verb.Taken)];
            return Judge(message.Read(verb.Forms, turned, 0, Atoms.Count));
        }

        return Cued() ?? (message.Vocabulary.Pieces.Contains((int)Math.Clamp(number.Value, 0, int.MaxValue)) && rest[0].Kind is AtomKind.Word or AtomKind.Name or AtomKind.Mark
            ? Judge(message.Read(catalogue.Of("note"), message.Start, Atoms.Count))
            : null);
    }

    // Pia bought 1 L white: another's record is agreed to first.
    private Heard? MemberFirst()
    {
        var start = message.Start;
        if (Atoms[start].NameOf(NameKind.Member) is not { } member || IsQuestion || message.WordAt(start + 1) is not { } word)
        {
            return null;
        }

        List<Atom> turned = [Atoms[start], .. Atoms.Skip(start + 1 + word.Taken)];
        var draft = message.Read(catalogue.Of(word.Word), turned, 0, Atoms.Count);
        return draft.Form.Records ? Agreed(draft, $"is somebody else: is this {member.Name}'s record?", member.Name) : Judge(draft);
    }

    // 6 colours, 2 tiles, 8 x: a number before what it counts is no piece.
    private bool IsCount(int at) => at + 1 < Atoms.Count && !Atoms[at].IsHashed
        && (Atoms[at + 1].IsWord("colours", "colors", "colour", "color", "cols", "people", "pers", "persons", "coats", "coat", "parts", "to", "x", "by")
            || (Atoms[at + 1].Kind == AtomKind.Word && (Values.SurfaceWords.IsNoun(Atoms[at + 1].Lower) || Values.SurfaceWords.Shape(Atoms[at + 1].Lower) is not null))
            || Atoms[at + 1].Measures(Measure.Length));

    private (IReadOnlyList<Command> Forms, int At, int Taken)? Verb(int from)
    {
        for (var at = from; at < Math.Min(from + 3, Atoms.Count); at++)
        {
            if (message.WordAt(at) is { } word)
            {
                var forms = catalogue.Of(word.Word).Where(form => form.Records && form.Sheet.Takes.Any(slot => slot is Values.PiecesSlot or Values.WeighingsSlot)).ToList();
                return forms.Count > 0 ? (forms, at, word.Taken) : null;
            }

            if (!Atoms[at].IsWord("is", "are", "has", "was", "just", "now") && Atoms[at].Kind != AtomKind.Mark)
            {
                return null;
            }
        }

        return null;
    }

    private Heard? Cued()
    {
        var seen = new Sightings(Atoms, message.Vocabulary);
        Command? best = null;
        Cue? by = null;
        var bestScore = 0;
        foreach (var form in catalogue.Forms)
        {
            if (form.Records && IsQuestion)
            {
                continue;
            }

            foreach (var cue in form.Sheet.Cues)
            {
                var score = cue.Score(seen);
                if (score > bestScore)
                {
                    (best, by, bestScore) = (form, cue, score);
                }
            }
        }

        if (best is null)
        {
            return null;
        }

        var draft = message.Read([best], 0, Atoms.Count);
        return best.Records && !by!.IsPlain
            ? Agreed(draft, $"is read as {best.Sheet.Word}", draft.Slips.Count == 0 ? draft.Said.Typed : "")
            : Judge(draft);
    }

    private Heard? Misspelt(int reach)
    {
        var start = message.Start;
        var first = Atoms[start];
        if (first.Kind != AtomKind.Word || first.Lower.Length < 2 || Fillers.Holds(first.Lower) || Fillers.OpensQuestion(first.Lower))
        {
            return null;
        }

        var nearest = Nearest.All(first.Lower, catalogue.Words, first.Lower.Length < 4 ? 1 : reach);
        if (nearest.Count == 0)
        {
            return null;
        }

        // Two words as near: the one whose command can take the rest of the line.
        var drafts = nearest.Select(word => (Word: word, Draft: message.Read(catalogue.Of(word), start + 1, Atoms.Count))).ToList();
        var (right, draft) = drafts.OrderBy(one => one.Draft.Slips.Count > 0).ThenByDescending(one => one.Draft.Fitting).First();
        draft.Said.NoteList.Insert(0, $"“{first.Lower}” taken as {right}");
        return draft.Form.Records && draft.Slips.Count == 0
            ? Agreed(draft, $"is no command; {right} is the nearest", first.Lower)
            : Judge(draft);
    }

    // 6 colours bloom on my 30cm panel, amounts?
    private Heard? Anywhere()
    {
        for (var at = 0; at < Atoms.Count; at++)
        {
            if (Atoms[at].Kind == AtomKind.Word && !Fillers.Holds(Atoms[at].Lower)
                && catalogue.Of(Atoms[at].Lower).Where(form => !form.Records).ToList() is { Count: > 0 } forms)
            {
                List<Atom> others = [.. Atoms.Take(at), .. Atoms.Skip(at + 1)];
                var draft = message.Read(forms, others, 0, Atoms.Count);
                return draft.Slips.Count == 0 || draft.Said.Understood.Count > 0 ? Judge(draft) : null;
            }
        }

        return null;
    }

    /// <summary>What a draft amounts to.</summary>
    internal static Heard Judge(PhraseDraft draft)
    {
        if (draft.Slips.Count > 0)
        {
            return Unread(draft);
        }

        return draft switch
        {
            { Form.Records: false } => new Heard.Asked(draft.Said),
            { Doubts.Count: > 0 } => new Heard.Doubtful([draft.Said], new Misread(draft.Doubts[0].Word, draft.Doubts[0].Why, draft.Said.Line), draft.Said.Line),
            _ => new Heard.Told(draft.Said),
        };
    }

    private static Heard Agreed(PhraseDraft draft, string why, string word) => draft.Slips.Count > 0
        ? Unread(draft)
        : new Heard.Doubtful([draft.Said], new Misread(word, why, draft.Said.Line), draft.Said.Line);

    private static Heard.Unread Unread(PhraseDraft draft)
    {
        var slip = draft.Slips.OrderBy(one => one.Start).First();
        return new Heard.Unread(draft.Form.Sheet.Word, new Misread(slip.Word, slip.Why, slip.Try ?? draft.Form.Sheet.Examples[0]));
    }
}
