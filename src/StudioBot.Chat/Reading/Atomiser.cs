namespace StudioBot.Chat.Reading;

/// <summary>Joins tokens to the smallest parts that mean something: quantities, sizes, ratios, names, words.</summary>
internal sealed class Atomiser
{
    // Nobody buys 1.2 ml and nothing weighs a ton: units below this factor group thousands, larger ones have decimals.
    private const double SmallUnit = 20;

    private const int LongestName = 4;

    private readonly string _text;
    private readonly TokenCursor _tokens;
    private readonly Vocabulary _vocabulary;
    private readonly List<Atom> _atoms = [];

    private Atomiser(string plain, Vocabulary vocabulary) =>
        (_text, _tokens, _vocabulary) = (plain, new TokenCursor(Lexer.Cut(plain)), vocabulary);

    /// <summary>The atoms of a message.</summary>
    /// <param name="plain">The message with plain characters.</param>
    /// <param name="vocabulary">The studio's names.</param>
    public static List<Atom> Join(string plain, Vocabulary vocabulary)
    {
        var atomiser = new Atomiser(plain, vocabulary);
        while (!atomiser._tokens.IsAtEnd)
        {
            atomiser.Next();
        }

        return SizeJoiner.Join(atomiser._atoms);
    }

    private Token Now => _tokens.Now;

    private void Next()
    {
        switch (Now.Kind)
        {
            case TokenKind.Number:
                Figure();
                break;
            case TokenKind.Word:
                Word();
                break;
            case TokenKind.Mark:
                Mark();
                break;
            default:
                Add(AtomKind.NewLine, 1);
                break;
        }
    }

    private void Mark()
    {
        if (Now.Lower == "#" && _tokens.IsNumber(1))
        {
            _tokens.Pass(1);
            Number(isHashed: true);
        }
        else if (UnitWords.OfSign(Now.Lower) is { } currency && _tokens.At(1) is { Kind: TokenKind.Number } sum)
        {
            Add(AtomKind.Quantity, 2, sum.Value, currency, sum.Flaw);
        }
        else
        {
            Add(AtomKind.Mark, 1);
        }
    }

    private void Figure()
    {
        if (RatioTokens.Now(_tokens, mayEndInColon: !OpensNote) is { } ratio)
        {
            Add(AtomKind.Ratio, ratio.Taken, ratio.Parts[0], flaw: ratio.Flaw, parts: ratio.Parts);
        }
        else if (!Fraction())
        {
            Number(isHashed: false);
        }
    }

    // "17: …" and "note 17: …" introduce words.
    private bool OpensNote => _atoms.Count == 0
        || (_atoms.Count == 1 && _atoms[0] is { Kind: AtomKind.Word, Lower: "note" or "label" });

    // 2/1 and 11/12; 1/2 and the like are numbers, and 5.50/10g is a price.
    private bool Fraction()
    {
        if (!NumberTokens.IsSlash(_tokens, 1) || _tokens.At(2) is not { Kind: TokenKind.Number, Glued: true } under)
        {
            return false;
        }

        if (under.Value == 0)
        {
            Add(AtomKind.Number, 3, flaw: NumberFlaw.NotANumber);
            return true;
        }

        if (NumberTokens.ProperFraction(_tokens, 0) is not null || UnitTokens.At(_tokens, 3) is not null)
        {
            return false;
        }

        Add(AtomKind.Fraction, 3, Now.Value, parts: [Now.Value, under.Value]);
        return true;
    }

    private void Number(bool isHashed)
    {
        var (value, flaw, taken) = NumberTokens.At(_tokens, 0);
        if (Quantity(value, flaw, taken))
        {
            return;
        }

        var start = Now.Start - (isHashed ? 1 : 0);
        _atoms.Add(new Atom(AtomKind.Number, start, End(taken), Now.Lower)
        {
            Value = flaw == NumberFlaw.TwoReadings ? value * 1000 : value,
            Typed = value,
            Flaw = flaw,
            IsHashed = isHashed,
            Glued = Now.Glued,
        });
        _tokens.Pass(taken);
    }

    private bool Quantity(double value, NumberFlaw flaw, int ahead)
    {
        if (UnitTokens.At(_tokens, ahead) is not { } found)
        {
            return false;
        }

        var (unit, taken) = (found.Unit, ahead + found.Taken);
        if (flaw == NumberFlaw.TwoReadings)
        {
            (value, flaw) = unit.Factor < SmallUnit ? (value * 1000, flaw) : (value, NumberFlaw.None);
        }

        if (unit.Name == "ft" && Inches(taken) is { } inches)
        {
            (value, taken) = (value + inches.Value / 12, taken + inches.Taken);
        }

        Add(AtomKind.Quantity, taken, value, unit, flaw);
        return true;
    }

    // The 6" of 1' 6".
    private (double Value, int Taken)? Inches(int ahead)
    {
        if (_tokens.At(ahead) is not { Kind: TokenKind.Number, Flaw: NumberFlaw.None, Value: < 12 })
        {
            return null;
        }

        var (value, _, taken) = NumberTokens.At(_tokens, ahead);
        return UnitTokens.At(_tokens, ahead + taken) is { Unit.Name: "in" } unit ? (value, taken + unit.Taken) : null;
    }

    private void Word()
    {
        if (SpokenNumber.Now(_tokens) is not { } spoken)
        {
            Name();
        }
        else if (!Quantity(spoken.Value, NumberFlaw.None, spoken.Taken))
        {
            Add(AtomKind.Number, spoken.Taken, spoken.Value);
        }
    }

    private void Name()
    {
        // Pia 2: a figure may end a name, and begins none.
        List<string> words = [];
        while (words.Count < LongestName
            && _tokens.At(words.Count) is { } word
            && (word.Kind == TokenKind.Word || (word.Kind == TokenKind.Number && words.Count > 0)))
        {
            words.Add(word.Lower);
        }

        var (names, length) = _vocabulary.Match(words);
        if (length == 0)
        {
            Add(AtomKind.Word, 1);
            return;
        }

        _atoms.Add(new Atom(AtomKind.Name, Now.Start, End(length), string.Join(' ', words.Take(length)))
        {
            Names = names,
            Glued = Now.Glued,
        });
        _tokens.Pass(length);
    }

    private void Add(
        AtomKind kind,
        int taken,
        double value = 0,
        Unit? unit = null,
        NumberFlaw flaw = NumberFlaw.None,
        IReadOnlyList<double>? parts = null)
    {
        var isAsSaid = kind is AtomKind.Word or AtomKind.Mark or AtomKind.NewLine;
        _atoms.Add(new Atom(kind, Now.Start, End(taken), isAsSaid ? Now.Lower : _text[Now.Start..End(taken)])
        {
            Value = unit is { Measure: not Measure.Temperature } ? value * unit.Factor : value,
            Typed = value,
            Unit = unit,
            Flaw = flaw,
            Parts = parts ?? [],
            Glued = Now.Glued,
        });
        _tokens.Pass(taken);
    }

    private int End(int taken) => _tokens.At(taken - 1)!.Value.End;
}
