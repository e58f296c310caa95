using System.Globalization;
using System.Text;
using StudioBot.Chat.Exporting;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using Columns = StudioBot.Chat.Importing.StockSheet.Columns;

namespace StudioBot.Chat.Importing;

/// <summary>Reads the cells of one row; what can't be read is told, each for itself.</summary>
internal sealed class OpeningCells(
    StockSheet sheet, CsvRow row, DateTimeOffset now, StudioZone zone, string currency,
    ICollection<ImportTrouble> troubles)
{
    private const int LongestName = 60;
    private const int LongestLabel = 20;
    private const int LongestWhy = 1000;

    // A thousand litres, a ton, a million: what is more is a slip, and the book's sums stay exact up to there.
    private const decimal Most = 1_000_000;

    private static readonly string[] WithOffset =
    [
        "yyyy-MM-dd'T'HH:mm:ss.FFFzzz", "yyyy-MM-dd'T'HH:mmzzz", "yyyy-MM-dd'T'HH:mm:ss.FFF'Z'",
        "yyyy-MM-dd'T'HH:mm'Z'",
    ];

    private static readonly string[] OnOurClock =
    [
        "yyyy-MM-dd'T'HH:mm:ss.FFF", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd HH:mm:ss", "yyyy-MM-dd HH:mm",
    ];

    /// <summary>The lot; none where a cell of it can't be read.</summary>
    public OpeningLot? Read()
    {
        var before = troubles.Count;
        var material = Name();
        var form = Form();
        var label = Label();
        var unit = Unit(form);
        var left = Quantity(Columns.Left, unit);
        var bought = Typed(Columns.Bought).Length > 0 ? Quantity(Columns.Bought, unit) : left;
        var (price, worth) = (Sum(Columns.Price), Sum(Columns.Value));
        CheckCurrency();
        var boughtAt = Moment(Columns.BoughtAt);
        var openedAt = Moment(Columns.OpenedAt);
        var stopped = Stopped();
        return troubles.Count > before || left is null || bought is null ? null
            : new OpeningLot(row.Line, material, form, label, bought, left, boughtAt ?? now)
            {
                Price = price,
                Worth = worth,
                OpenedAt = openedAt,
                Stopped = stopped,
            };
    }

    private string Typed(string column) => sheet.Cell(row, column).Trim();

    private void Trouble(string column, string what, string works) =>
        troubles.Add(new ImportTrouble(row.Line, column, what, works));

    private string Name()
    {
        var name = Words(Columns.Material, LongestName);
        if (name.Length == 0)
        {
            Trouble(Columns.Material, "no material is named", "Write its name: white");
        }

        return name;
    }

    private string? Label() => Words(Columns.Lot, LongestLabel) is { Length: > 0 } label ? label : null;

    // One line that people can type and see.
    private string Words(string column, int longest)
    {
        var words = FormulaShield.Take(sheet.Cell(row, column)).Trim();
        if (words.EnumerateRunes().Count() > longest)
        {
            Trouble(
                column, $"{ImportTrouble.Quoted(words)} is too long", $"{longest} characters at most.");
        }
        else if (words.EnumerateRunes().Any(letter => Rune.GetUnicodeCategory(letter)
            is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator))
        {
            Trouble(
                column, $"{ImportTrouble.Quoted(words)} holds what nobody can type", "Write it on one line.");
        }

        return words;
    }

    private MaterialForm? Form()
    {
        var typed = Typed(Columns.Form);
        if (typed.Length == 0)
        {
            return null;
        }

        foreach (var (form, word) in StockTable.Forms)
        {
            if (word.Equals(typed, StringComparison.OrdinalIgnoreCase))
            {
                return form;
            }
        }

        Trouble(
            Columns.Form, $"{ImportTrouble.Quoted(typed)} is no form",
            $"There are {string.Join(", ", StockTable.Forms.Values)}.");
        return null;
    }

    private string? Unit(MaterialForm? form)
    {
        var typed = Typed(Columns.Unit);
        string[] fit = form is { } known ? [UnitOf(known)] : ["ml", "g", "piece"];
        if (fit.FirstOrDefault(unit => unit.Equals(typed, StringComparison.OrdinalIgnoreCase)) is { } one)
        {
            return one;
        }

        var of = form is { } said ? $" of a material that is {StockTable.Forms[said]}" : "";
        Trouble(
            Columns.Unit,
            typed.Length == 0 ? "the unit is missing" : $"{ImportTrouble.Quoted(typed)} is no unit{of}",
            $"Write {string.Join(" or ", fit)}.");
        return null;
    }

    /// <summary>The unit in which materials of this form are kept.</summary>
    internal static string UnitOf(MaterialForm form) => form switch
    {
        MaterialForm.Powder => "g",
        MaterialForm.Counted => "piece",
        _ => "ml",
    };

    private Amount? Quantity(string column, string? unit)
    {
        var places = unit == "piece" ? 0 : 3;
        if (Number(column, places, places == 0 ? "40" : "430.5") is not { } number)
        {
            return null;
        }

        if (number is <= 0 or > Most)
        {
            Trouble(
                column, number > 0 ? $"{Typed(column)} is too much for one lot" : "nothing is there",
                number > 0 ? "1000000 at most." : "Leave out a lot that is empty.");
            return null;
        }

        return unit switch
        {
            "ml" => new Amount.ByVolume(Volume.FromMillilitres((double)number)),
            "g" => new Amount.ByMass(Mass.FromGrams((double)number)),
            "piece" => new Amount.ByCount((int)number),
            _ => null,
        };
    }

    private Money? Sum(string column)
    {
        if (Typed(column).Length == 0 || Number(column, 2, "24.90") is not { } sum)
        {
            return null;
        }

        if (sum <= Most)
        {
            return Money.From(sum);
        }

        Trouble(column, $"{Typed(column)} is too much for one lot", "1000000.00 at most.");
        return null;
    }

    private decimal? Number(string column, int places, string works)
    {
        var typed = Typed(column);
        if (typed.Length == 0)
        {
            Trouble(column, "a figure is missing", $"Write it like {works}");
            return null;
        }

        var sign = typed.IndexOfAny(['.', ',']);
        var whole = sign < 0 ? typed : typed[..sign];
        var rest = sign < 0 ? "" : typed[(sign + 1)..];
        if (!IsDigits(whole) || whole.Length is 0 or > 12 || !IsDigits(rest) || (sign >= 0 && rest.Length == 0))
        {
            Trouble(column, $"{ImportTrouble.Quoted(typed)} is no figure from 0 up", $"Write it like {works}");
            return null;
        }

        // Three digits behind the sign that the file's own country doesn't write may be thousands.
        if (sign >= 0 && IsTwoSided(typed[sign], rest.Length))
        {
            Trouble(
                column, $"{ImportTrouble.Quoted(typed)} may be two figures",
                $"Write {whole}{rest} or {whole}{(sheet.Between == ';' ? ',' : '.')}{rest}");
            return null;
        }

        if (rest.TrimEnd('0').Length > places)
        {
            Trouble(
                column, $"{ImportTrouble.Quoted(typed)} has too many places",
                places == 0 ? $"Write whole pieces, like {works}" : $"{places} at most, like {works}");
            return null;
        }

        return decimal.Parse($"{whole}.{rest}0", CultureInfo.InvariantCulture);
    }

    private bool IsTwoSided(char sign, int behind) => behind == 3 && sign == (sheet.Between == ';' ? '.' : ',');

    private static bool IsDigits(string text) => text.All(char.IsAsciiDigit);

    private void CheckCurrency()
    {
        var typed = Typed(Columns.Currency);
        if (typed.Length > 0 && !typed.Equals(currency, StringComparison.OrdinalIgnoreCase))
        {
            Trouble(
                Columns.Currency, $"{ImportTrouble.Quoted(typed)} is not the studio's currency",
                currency.Length > 0 ? $"Write the sums in {currency}." : "Leave it empty.");
        }
    }

    // A day alone is its noon, today's is now.
    private DateTimeOffset? Moment(string column)
    {
        var typed = Typed(column);
        if (typed.Length == 0)
        {
            return null;
        }

        if (Read(typed) is not { } moment)
        {
            Trouble(
                column, $"{ImportTrouble.Quoted(typed)} is no day or moment",
                $"Write {zone.LocalOf(now):yyyy-MM-dd}, or {Cell.Of(now, zone).Text}");
            return null;
        }

        if (moment > now)
        {
            Trouble(column, $"{ImportTrouble.Quoted(typed)} is still to come", "Write when it was, or leave it empty.");
            return null;
        }

        return moment;
    }

    private DateTimeOffset? Read(string typed)
    {
        var clock = CultureInfo.InvariantCulture;
        if (DateTimeOffset.TryParseExact(typed, WithOffset, clock, DateTimeStyles.AssumeUniversal, out var moment))
        {
            return moment.ToUniversalTime();
        }

        if (DateTime.TryParseExact(typed, OnOurClock, clock, DateTimeStyles.None, out var local))
        {
            return zone.InstantOf(DateOnly.FromDateTime(local), TimeOnly.FromDateTime(local));
        }

        return !DateOnly.TryParseExact(typed, "yyyy-MM-dd", clock, DateTimeStyles.None, out var day) ? null
            : day == zone.DateOf(now) ? now
            : zone.InstantOf(day, new TimeOnly(12, 0));
    }

    // The words stay as they are, blanks and lines too.
    private LotStop? Stopped()
    {
        var why = FormulaShield.Take(sheet.Cell(row, Columns.StoppedWhy));
        if (why.Contains('\0', StringComparison.Ordinal) || why.Length > LongestWhy)
        {
            Trouble(
                Columns.StoppedWhy, $"{ImportTrouble.Quoted(why)} can't be kept", $"{LongestWhy} characters at most.");
            return null;
        }

        var at = Moment(Columns.StoppedAt);
        if (Typed(Columns.StoppedAt).Length == 0 && why.Trim().Length > 0)
        {
            Trouble(
                Columns.StoppedAt, "why it was stopped is there, since when is not",
                $"Write {zone.LocalOf(now):yyyy-MM-dd}, or leave both empty.");
        }

        return at is { } since ? new LotStop(since, why.Length > 0 ? why : null) : null;
    }
}
