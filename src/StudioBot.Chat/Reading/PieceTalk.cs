using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Reading;

/// <summary>
/// Messages that begin with a piece's number, or ask after one: <c>17 dry?</c>, <c>17 sanded</c>, <c>17 fisheyes</c>.
/// </summary>
internal sealed class PieceTalk(Message message)
{
    // How far behind the number its verb may stand: 17 is just sanded.
    private const int VerbReach = 3;

    private IReadOnlyList<Atom> Atoms => message.Atoms;

    private Atom First => Atoms[message.Start];

    /// <summary>Whether the first word is a number that may be a piece's.</summary>
    public bool OpensLine =>
        First is { IsNumber: true, IsWhole: true, Flaw: NumberFlaw.None } && !IsCount(message.Start);

    /// <summary>Whether that piece is asked after, or nothing but its number said.</summary>
    public bool IsAskedOfFirst =>
        message.IsQuestion || Atoms.Skip(message.Start + 1).All(atom => atom.Kind == AtomKind.Mark);

    /// <summary>The record of the piece that opens the line; none where a question opens with another number.</summary>
    public Heard? AskedOfFirst() => message.IsQuestion && !IsPiece(First) ? null : Card(First);

    /// <summary>The record of the piece whose number stands anywhere; none where there is none.</summary>
    public Heard? AskedOfAny() =>
        Atoms.FirstOrDefault(atom => atom.IsNumber && IsPiece(atom)) is { } number ? Card(number) : null;

    /// <summary>What was done to the piece: <c>17 sanded</c> is <c>sand 17</c>.</summary>
    public Heard? Done()
    {
        var behind = message.Start + 1;
        while (behind < Atoms.Count && IsOneOfSeveral(Atoms[behind]))
        {
            behind++;
        }

        if (Verb(behind) is not { } verb)
        {
            return null;
        }

        var between = Atoms.Take(verb.At).Skip(message.Start + 1);
        List<Atom> turned = [First, .. between, .. Atoms.Skip(verb.At + verb.Taken)];
        var draft = message.Read(verb.Forms, turned, 0, Atoms.Count);
        return draft.Form.Sheet.IsElseNoted && SaysMore(draft) ? null : Verdict.Of(draft);
    }

    // 17 tacky at the rim, 3 cm: words come before any figure that has no place.
    private static bool SaysMore(PhraseDraft draft) => draft.Slips.Count > 0
        && Enumerable.Range(0, draft.Atoms.Count)
            .Where(at => !draft.IsTaken(at))
            .Select(at => draft.Atoms[at])
            .FirstOrDefault(atom => atom.Kind != AtomKind.Mark && !Fillers.Holds(atom.Lower))
            is { Kind: AtomKind.Word or AtomKind.Name };

    /// <summary>Words about the piece are a note.</summary>
    public Heard? Noted() =>
        IsPiece(First) && Atoms[message.Start + 1].Kind is AtomKind.Word or AtomKind.Name or AtomKind.Mark
            ? Verdict.Of(message.Read(message.Catalogue.Of("note"), message.Start, Atoms.Count))
            : null;

    private Heard Card(Atom number) => Verdict.Of(message.Read(
        message.Catalogue.Of("piece").Where(form => !form.Records).ToList(), [number], 0, Atoms.Count));

    private bool IsPiece(Atom number) =>
        message.Vocabulary.Pieces.Contains((int)Math.Clamp(number.Value, 0, int.MaxValue));

    // 6 colours, 2 tiles, 8 x: a number before what it counts is no piece.
    private bool IsCount(int at)
    {
        if (at + 1 >= Atoms.Count || Atoms[at].IsHashed)
        {
            return false;
        }

        var next = Atoms[at + 1];
        return next.Measures(Measure.Length)
            || next.IsWord("colours", "colors", "colour", "color", "cols", "people", "pers", "persons")
            || next.IsWord("coats", "coat", "parts", "to", "x", "by")
            || (next.Kind == AtomKind.Word && SurfaceWords.All.Contains(next.Lower));
    }

    // 17 & 18 are dry.
    private static bool IsOneOfSeveral(Atom atom) => atom.IsNumber || atom.IsWord("and") || atom.IsMark("&");

    private (IReadOnlyList<Command> Forms, int At, int Taken)? Verb(int from)
    {
        for (var at = from; at < Math.Min(from + VerbReach, Atoms.Count); at++)
        {
            if (message.WordAt(at) is { } word)
            {
                var forms = message.Catalogue.Of(word.Word).Where(form => form.Records && TakesPieces(form)).ToList();
                return forms.Count > 0 ? (forms, at, word.Taken) : null;
            }

            var isBetween = Atoms[at].IsWord("is", "are", "has", "was", "just", "now", "on", "in");
            if (!isBetween && Atoms[at].Kind != AtomKind.Mark)
            {
                return null;
            }
        }

        return null;
    }

    private static bool TakesPieces(Command form) => form.Sheet.Takes.Any(slot => slot is PiecesSlot or WeighingsSlot);
}
