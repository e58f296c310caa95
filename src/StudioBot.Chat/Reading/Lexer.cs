namespace StudioBot.Chat.Reading;

/// <summary>Cuts a message into numbers, words and marks, each with its place.</summary>
internal sealed class Lexer
{
    // Beyond this nothing at a pour table is counted or measured.
    private const double Absurd = 1e15;

    private const int MostOnStack = 64;

    private readonly string _text;
    private readonly List<Token> _tokens = [];
    private int _at;

    private Lexer(string text) => _text = text;

    /// <summary>The tokens of a message whose characters are already plain.</summary>
    public static List<Token> Cut(string plain)
    {
        var lexer = new Lexer(plain);
        while (lexer._at < plain.Length)
        {
            lexer.Next();
        }

        return lexer._tokens;
    }

    private char Now => _text[_at];

    private char Peek(int ahead = 1) => _at + ahead < _text.Length ? _text[_at + ahead] : '\0';

    private Token? Last => _tokens.Count > 0 ? _tokens[^1] : null;

    private bool AfterNumber => Last is { Kind: TokenKind.Number } last && last.End == _at;

    private void Next()
    {
        if (Now == '\n')
        {
            Add(TokenKind.NewLine, _at + 1, "\n");
        }
        else if (Now == ' ' || Characters.IsInvisible(Now))
        {
            _at++;
        }
        else if (StartsNumber())
        {
            Number();
        }
        else if (Characters.Fraction(Now) is { } fraction)
        {
            Add(TokenKind.Number, _at + 1, Now.ToString(), fraction);
        }
        else if (char.IsDigit(Now))
        {
            Foreign();
        }
        else if (char.IsLetter(Now) && !IsTimesSign())
        {
            Word();
        }
        else
        {
            Add(TokenKind.Mark, _at + (char.IsSurrogatePair(_text, _at) ? 2 : 1), Now.ToString());
        }
    }

    private bool StartsNumber()
    {
        if (char.IsAsciiDigit(Now))
        {
            return true;
        }

        var pointed = Now == '.' && char.IsAsciiDigit(Peek()) && !AfterNumber;
        var negative = Now == '-' && (char.IsAsciiDigit(Peek()) || (Peek() == '.' && char.IsAsciiDigit(Peek(2))))
            && (_at == 0 || !char.IsLetterOrDigit(_text[_at - 1]));
        return pointed || negative;
    }

    // The x of 30x40, 30cmx40cm or 12"x16": it stands behind a number or its unit, and before a number.
    private bool IsTimesSign() => Now is 'x' or 'X' && char.IsAsciiDigit(Peek())
        && Last is { } last && last.End == _at
        && (last.Kind == TokenKind.Number || last.Lower is "\"" or "'" || IsUnit(last));

    private static bool IsUnit(Token token) => token is { Kind: TokenKind.Word, Glued: true }
        && UnitWords.Of(token.Lower) is not null;

    private void Number()
    {
        var (end, isHidden) = NumberEnd();
        var typed = _text[_at..end];
        var (value, flaw) = isHidden ? (0, NumberFlaw.Invisible) : NumberText.Read(typed);
        if (flaw == NumberFlaw.NotANumber && NumberText.IsList(typed))
        {
            List(typed.Split(','));
            return;
        }

        if (flaw == NumberFlaw.None && end < _text.Length && Characters.Fraction(_text[end]) is { } fraction)
        {
            value += fraction;
            end++;
        }

        Add(TokenKind.Number, end, typed, value, Math.Abs(value) > Absurd ? NumberFlaw.Absurd : flaw);
    }

    // 17,18,21.
    private void List(string[] numbers)
    {
        for (var i = 0; i < numbers.Length; i++)
        {
            if (i > 0)
            {
                Add(TokenKind.Mark, _at + 1, ",");
            }

            var (value, flaw) = NumberText.Read(numbers[i]);
            Add(TokenKind.Number, _at + numbers[i].Length, numbers[i], value, flaw);
        }
    }

    // Points, commas and what can't be seen belong to a number only before a digit; so does the first of two points.
    private (int End, bool IsHidden) NumberEnd()
    {
        var end = _at + (Now == '-' ? 1 : 0);
        var isHidden = false;
        while (end < _text.Length)
        {
            var next = end + 1 < _text.Length ? _text[end + 1] : '\0';
            var isUnseen = Characters.IsInvisible(_text[end]) && char.IsAsciiDigit(next);
            var isPoint = _text[end] is '.' or ',' && char.IsAsciiDigit(next);
            var isFirstOfTwo = _text[end] == '.' && next == '.';
            if (!char.IsAsciiDigit(_text[end]) && !isUnseen && !isPoint && !isFirstOfTwo)
            {
                break;
            }

            isHidden |= isUnseen;
            end++;
        }

        return (Exponent(end), isHidden);
    }

    private int Exponent(int end)
    {
        var at = end;
        if (at < _text.Length && _text[at] is 'e' or 'E')
        {
            at++;
            at += at < _text.Length && _text[at] is '+' or '-' ? 1 : 0;
            var digits = at;
            while (at < _text.Length && char.IsAsciiDigit(_text[at]))
            {
                at++;
            }

            return at > digits ? at : end;
        }

        return end;
    }

    private void Foreign()
    {
        var end = _at;
        while (end < _text.Length && char.IsDigit(_text[end]))
        {
            end++;
        }

        Add(TokenKind.Number, end, _text[_at..end], 0, NumberFlaw.ForeignDigits);
    }

    private void Word()
    {
        var isUnit = AfterNumber;
        var end = _at;
        while (end < _text.Length && GoesOn(end, isUnit))
        {
            end++;
        }

        var word = Lower(end);
        if (EndsInSquare(end, isUnit))
        {
            word += "2";
            end++;
        }

        if (word is "nan" or "infinity" or "inf")
        {
            Add(TokenKind.Number, end, word, 0, NumberFlaw.NotANumber);
        }
        else
        {
            Add(TokenKind.Word, end, word);
        }
    }

    // In lower case, without what can't be seen and what only joins.
    private string Lower(int end)
    {
        Span<char> lower = end - _at <= MostOnStack ? stackalloc char[MostOnStack] : new char[end - _at];
        var length = 0;
        for (var at = _at; at < end; at++)
        {
            if (char.IsLetterOrDigit(_text[at]) || _text[at] is '-' or '_')
            {
                lower[length++] = char.ToLowerInvariant(_text[at]);
            }
        }

        return lower[..length].ToString();
    }

    // A word that touches a number is its unit: letters only, up to the x of 30cmx40cm.
    private bool GoesOn(int at, bool isUnit)
    {
        var here = _text[at];
        var next = at + 1 < _text.Length ? _text[at + 1] : '\0';
        return here switch
        {
            'x' or 'X' when isUnit && at > _at && char.IsAsciiDigit(next) => false,
            '-' or '_' => !isUnit && char.IsLetterOrDigit(next),
            '\'' => !isUnit && at > _at && char.IsLetter(next),
            _ when char.IsLetter(here) => true,
            _ when char.IsAsciiDigit(here) => !isUnit,
            _ => Characters.IsInvisible(here),
        };
    }

    // cm2 and cm²: an area's unit.
    private bool EndsInSquare(int end, bool isUnit)
    {
        var isSquare = end < _text.Length && (_text[end] == '²' || (isUnit && _text[end] == '2'));
        return isSquare && (end + 1 == _text.Length || !char.IsLetterOrDigit(_text[end + 1]));
    }

    private void Add(TokenKind kind, int end, string lower, double value = 0, NumberFlaw flaw = NumberFlaw.None)
    {
        var glued = _at > 0 && _text[_at - 1] != ' ' && Last is { } last && last.End == _at;
        _tokens.Add(new Token(kind, _at, end, lower, glued) { Value = value, Flaw = flaw });
        _at = end;
    }
}
