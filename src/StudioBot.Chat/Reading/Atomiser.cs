namespace StudioBot.Chat.Reading;

/// <summary>Joins tokens to the smallest parts that mean something: quantities, sizes, ratios, names, words.</summary>
internal sealed class Atomiser(string text, IReadOnlyList<Token> tokens, Vocabulary vocabulary)
{
    private readonly List<Atom> _atoms = [];
    private int _at;

    /// <summary>The atoms of a message.</summary>
    /// <param name="plain">The message with plain characters.</param>
    /// <param name="vocabulary">The studio's names.</param>
    public static List<Atom> Join(string plain, Vocabulary vocabulary)
    {
        var atomiser = new Atomiser(plain, Lexer.Cut(plain), vocabulary);
        while (atomiser._at < atomiser.Count)
        {
            atomiser.Next();
        }

        return SizeJoiner.Join(atomiser._atoms);
    }

    private int Count => tokens.Count;

    private Token Now => tokens[_at];

    private Token? At(int ahead) => _at + ahead < Count ? tokens[_at + ahead] : null;

    private bool Is(int ahead, TokenKind kind) => At(ahead) is { } token && token.Kind == kind;

    private bool IsWord(int ahead, string word) => At(ahead) is { Kind: TokenKind.Word } token && token.Lower == word;

    private bool IsMark(int ahead, string mark) => At(ahead) is { Kind: TokenKind.Mark } token && token.Lower == mark;

    private void Next()
    {
        if (Now.Kind == TokenKind.Number)
        {
            Number(isHashed: false);
        }
        else if (Now is { Kind: TokenKind.Mark, Lower: "#" } && Is(1, TokenKind.Number))
        {
            _at++;
            Number(isHashed: true);
        }
        else if (Now.Kind == TokenKind.Mark && UnitWords.OfSign(Now.Lower) is { } currency && Is(1, TokenKind.Number))
        {
            Add(AtomKind.Quantity, 2, tokens[_at + 1].Value, currency, tokens[_at + 1].Flaw);
        }
        else if (Now.Kind == TokenKind.Word)
        {
            if (!Spoken())
            {
                Name();
            }
        }
        else
        {
            Add(Now.Kind == TokenKind.Mark ? AtomKind.Mark : AtomKind.NewLine, 1);
        }
    }

    private void Number(bool isHashed)
    {
        if (!isHashed && (Ratio() || Fraction()))
        {
            return;
        }

        var (value, flaw, taken) = Value();
        if (Unit(taken, value, flaw))
        {
            return;
        }

        _atoms.Add(new Atom(AtomKind.Number, tokens[_at].Start - (isHashed ? 1 : 0), tokens[_at + taken - 1].End, Now.Lower)
        {
            Value = flaw == NumberFlaw.TwoReadings ? value * 1000 : value, Typed = value, Flaw = flaw,
            IsHashed = isHashed, Glued = Now.Glued,
        });
        _at += taken;
    }

    // 20, 1 1/2, 1/2, 1 000.
    private (double Value, NumberFlaw Flaw, int Taken) Value()
    {
        var (value, flaw) = (Now.Value, Now.Flaw);
        if (flaw != NumberFlaw.None)
        {
            return (value, flaw, 1);
        }

        if (Proper(0) is { } fraction)
        {
            return (fraction, NumberFlaw.None, 3);
        }

        if (value == Math.Floor(value) && value >= 0 && Is(1, TokenKind.Number) && Proper(1) is { } rest)
        {
            return (value + rest, NumberFlaw.None, 4);
        }

        var grouped = value is >= 1 and <= 999 && value == Math.Floor(value)
            && At(1) is { Kind: TokenKind.Number, Lower: "000" };
        return grouped ? (value * 1000, NumberFlaw.None, 2) : (value, flaw, 1);
    }

    private double? Proper(int ahead)
    {
        if (At(ahead) is not { Kind: TokenKind.Number } over || !IsMark(ahead + 1, "/") || At(ahead + 2) is not { Kind: TokenKind.Number } under
            || tokens[_at + ahead + 1].Glued is false || !under.Glued)
        {
            return null;
        }

        return over.Value < under.Value && over.Value >= 1 && under.Value is 2 or 3 or 4 or 5 or 8 or 16
            ? over.Value / under.Value
            : null;
    }

    private bool Ratio()
    {
        var isColon = IsMark(1, ":");
        if (isColon && At(2) is { } next && (next.Kind == TokenKind.Number || next.Glued))
        {
            List<double> parts = [Now.Value];
            var flaw = Now.Flaw;
            var taken = 1;
            while (IsMark(taken, ":") && At(taken + 1) is { } part && (part.Kind == TokenKind.Number || part.Glued))
            {
                parts.Add(part.Value);
                flaw = flaw != NumberFlaw.None ? flaw : part.Kind == TokenKind.Number ? part.Flaw : NumberFlaw.NotANumber;
                taken += 2;
            }

            Add(AtomKind.Ratio, taken, parts[0], null, flaw, parts);
            return true;
        }

        if ((isColon && At(2) is null or { Kind: TokenKind.NewLine }) && tokens[_at + 1].Glued && _atoms.Count > 0 && !IsBehindCommandOnly())
        {
            Add(AtomKind.Ratio, 2, Now.Value, null, NumberFlaw.None, [Now.Value]);
            return true;
        }

        if (IsMark(1, ";") && Is(2, TokenKind.Number) && tokens[_at + 1].Glued && tokens[_at + 2].Glued)
        {
            Add(AtomKind.Ratio, 3, Now.Value, null, NumberFlaw.NotANumber, [Now.Value, tokens[_at + 2].Value]);
            return true;
        }

        if ((IsWord(1, "to") || IsWord(1, "auf")) && Is(2, TokenKind.Number) && !HasUnit(3) && !IsMark(3, ":") && !IsMark(3, "/"))
        {
            Add(AtomKind.Ratio, 3, Now.Value, null, tokens[_at + 2].Flaw, [Now.Value, tokens[_at + 2].Value]);
            return true;
        }

        return false;
    }

    private bool IsBehindCommandOnly() => _atoms.Count == 1 && _atoms[0].Kind == AtomKind.Word && _atoms[0].Lower is "note" or "label";

    // 2/1 and 11/12; 1/2 and the like are numbers, and 5.50/10g is a price.
    private bool Fraction()
    {
        if (!IsMark(1, "/") || !Is(2, TokenKind.Number) || !tokens[_at + 1].Glued || !tokens[_at + 2].Glued)
        {
            return false;
        }

        if (tokens[_at + 2].Value == 0)
        {
            Add(AtomKind.Number, 3, 0, null, NumberFlaw.NotANumber);
            return true;
        }

        if (Proper(0) is not null || HasUnit(3))
        {
            return false;
        }

        Add(AtomKind.Fraction, 3, Now.Value, null, NumberFlaw.None, [Now.Value, tokens[_at + 2].Value]);
        return true;
    }

    private bool HasUnit(int ahead) => UnitAt(ahead).Unit is not null;

    private (Unit? Unit, int Taken) UnitAt(int ahead)
    {
        if (At(ahead) is not { } token)
        {
            return (null, 0);
        }

        switch (token.Kind, token.Lower)
        {
            case (TokenKind.Word, "fl" or "fluid") when At(ahead + 1) is { Kind: TokenKind.Word } next && UnitWords.Of(next.Lower)?.Measure == Measure.Ounce:
                return (UnitWords.Of("fl oz"), 2);
            case (TokenKind.Word, "sq") when At(ahead + 1) is { Kind: TokenKind.Word } next && UnitWords.Of(next.Lower)?.Measure == Measure.Length:
                return (UnitWords.Of(UnitWords.Of(next.Lower)!.Name + "2"), 2);
            case (TokenKind.Word, "m" or "d") when !token.Glued:
                return (null, 0);
            case (TokenKind.Word, "in") when !token.Glued && IsPreposition(ahead):
                return (null, 0);
            case (TokenKind.Word, _) when UnitWords.Of(token.Lower) is { } unit:
                return unit.Measure == Measure.Degrees && At(ahead + 1) is { Kind: TokenKind.Word } letter
                    && UnitWords.Of(letter.Lower) is { Measure: Measure.Temperature } degrees
                    ? (degrees, 2)
                    : (unit, 1);
            case (TokenKind.Mark, "%"):
                return (UnitWords.Of("percent"), IsWord(ahead + 1, "rh") ? 2 : 1);
            case (TokenKind.Mark, "°"):
                return At(ahead + 1) is { Kind: TokenKind.Word, Glued: true } scale && UnitWords.Of(scale.Lower) is { Measure: Measure.Temperature } scaled
                    ? (scaled, 2)
                    : (UnitWords.Of("deg"), 1);
            case (TokenKind.Mark, "℃"):
                return (UnitWords.Of("c"), 1);
            case (TokenKind.Mark, "℉"):
                return (UnitWords.Of("f"), 1);
            case (TokenKind.Mark, "\"") when token.Glued:
                return (UnitWords.Of("in"), 1);
            case (TokenKind.Mark, "'") when token.Glued:
                return IsMark(ahead + 1, "'") ? (UnitWords.Of("in"), 2) : (UnitWords.Of("ft"), 1);
            case (TokenKind.Mark, "€" or "$" or "£") when At(ahead + 1) is not { Kind: TokenKind.Number, Glued: true }:
                return (UnitWords.OfSign(token.Lower), 1);
            default:
                return (null, 0);
        }
    }

    // "200 in ml", "60 in the cup": the word behind tells that no inch is meant.
    private bool IsPreposition(int ahead) => At(ahead + 1) is { Kind: TokenKind.Word } next
        && (next.Lower is "the" or "a" or "my" or "our" or "it" or "all" or "total" || UnitWords.Of(next.Lower) is not null);

    private bool Unit(int ahead, double value, NumberFlaw flaw)
    {
        var (unit, taken) = UnitAt(ahead);
        if (unit is null)
        {
            return false;
        }

        var size = value;
        if (flaw == NumberFlaw.TwoReadings)
        {
            // Nobody buys 1.2 ml and nothing weighs a ton: the small units group thousands, the large ones have decimals.
            (size, flaw) = unit.Factor < 20 ? (value * 1000, flaw) : (value, NumberFlaw.None);
        }

        if (unit.Name == "ft" && At(ahead + taken) is { Kind: TokenKind.Number, Flaw: NumberFlaw.None } inches)
        {
            var here = _at;
            _at += ahead + taken;
            var (whole, _, used) = Value();
            _at = here;
            var (second, more) = UnitAt(ahead + taken + used);
            if (second?.Name == "in" && inches.Value < 12)
            {
                Add(AtomKind.Quantity, ahead + taken + used + more, size + whole / 12, unit, flaw);
                return true;
            }
        }

        Add(AtomKind.Quantity, ahead + taken, size, unit, flaw);
        return true;
    }

    // six, half a litre, a week, a dozen.
    private bool Spoken()
    {
        var word = Now.Lower;
        if (word is "a" or "an" or "another" && At(1) is { Kind: TokenKind.Word } next)
        {
            var isCounted = next.Lower == "dozen" || UnitWords.Of(next.Lower) is { Measure: Measure.Time or Measure.Volume or Measure.Mass };
            return isCounted && next.Lower.Length > 1 && Spoken(next.Lower == "dozen" ? 12 : 1, next.Lower == "dozen" ? 2 : 1);
        }

        if (word == "half" && At(1) is { Kind: TokenKind.Word } of)
        {
            var article = of.Lower is "a" or "an" ? 1 : 0;
            return At(1 + article) is { Kind: TokenKind.Word } measure && UnitWords.Of(measure.Lower) is not null && measure.Lower.Length > 1
                && Spoken(0.5, 1 + article);
        }

        if (NumberWords.Of(word) is not { } number || (number == 1 && !CountsOne()))
        {
            return false;
        }

        var tens = number is >= 20 and <= 90 && At(1) is { Kind: TokenKind.Word } ones && NumberWords.Of(ones.Lower) is >= 1 and <= 9;
        return tens ? Spoken(number + NumberWords.Of(tokens[_at + 1].Lower)!.Value, 2) : Spoken(number, 1);
    }

    private bool CountsOne() => At(1) is { Kind: TokenKind.Word } next
        && (UnitWords.Of(next.Lower) is not null || next.Lower is "coat" or "colour" or "color" or "tile" or "panel" or "coaster" or "person" or "round");

    private bool Spoken(double value, int taken)
    {
        if (!Unit(taken, value, NumberFlaw.None))
        {
            Add(AtomKind.Number, taken, value);
        }

        return true;
    }

    private void Name()
    {
        List<string> words = [];
        for (var ahead = 0; ahead < 4 && At(ahead) is { Kind: TokenKind.Word } word; ahead++)
        {
            words.Add(word.Lower);
        }

        var (names, length) = vocabulary.Match(words);
        if (length == 0)
        {
            Add(AtomKind.Word, 1);
            return;
        }

        _atoms.Add(new Atom(AtomKind.Name, Now.Start, tokens[_at + length - 1].End, string.Join(' ', words.Take(length)))
        {
            Names = names, Glued = Now.Glued,
        });
        _at += length;
    }

    private void Add(
        AtomKind kind, int taken, double value = 0, Unit? unit = null, NumberFlaw flaw = NumberFlaw.None, IReadOnlyList<double>? parts = null)
    {
        var last = tokens[_at + taken - 1];
        var lower = kind is AtomKind.Word or AtomKind.Mark or AtomKind.NewLine ? Now.Lower : text[Now.Start..last.End];
        _atoms.Add(new Atom(kind, Now.Start, last.End, lower)
        {
            Value = unit is { Measure: not Measure.Temperature } ? value * unit.Factor : value,
            Typed = value, Unit = unit, Flaw = flaw, Parts = parts ?? [], Glued = Now.Glued,
        });
        _at += taken;
    }
}
