using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Sharing;

/// <summary>One member's account: how it stands, what moved it, and each of its lines.</summary>
internal sealed class MemberAccount
{
    // As many as a phone ever shows of them; one more tells whether there are more.
    private const int MostOnPage = LineBudget.Lines;

    private const int LongestName = 60;

    private readonly string _name;
    private readonly bool _isOwn;
    private readonly Turn _turn;
    private readonly Studio _studio;
    private readonly IReadOnlyDictionary<long, string> _names;
    private readonly long _id;

    /// <summary>The account of the member of this name.</summary>
    public MemberAccount(string name, bool isOwn, Turn turn, Studio studio)
    {
        (_name, _isOwn, _turn, _studio) = (name, isOwn, turn, studio);
        _names = studio.View.Members.Names();
        _id = _names.FirstOrDefault(member => member.Value == name).Key;
    }

    // As a message names it.
    private string Whose => _isOwn ? "me" : _name;

    /// <summary>The sum, what this month moved it by, and what waits for a word.</summary>
    /// <param name="stands">How it stands.</param>
    public Reply Show(string stands)
    {
        var (from, until) = AccountMonth.Of(AccountMonth.Now(_turn), _studio);
        List<Block> blocks = [new Block.Headline(stands)];
        List<Figure> parts = [.. _studio.View.Accounts.Within(_id, from, until)
            .GroupBy(Part)
            .OrderBy(part => part.Key, StringComparer.Ordinal)
            .Select(part => (What: part.Key, Sum: new Money(part.Sum(entry => entry.Sum.Cents))))
            .Where(part => part.Sum != default)
            .Select(part => new Figure(part.What, SignedSum.Of(part.Sum)))];
        if (parts.Count > 0)
        {
            blocks.Add(new Block.Line($"In {AccountMonth.Words(AccountMonth.Now(_turn))}:"));
            blocks.Add(FitRows.Of(parts));
        }
        else
        {
            blocks.Add(new Block.Line("Nothing moved it this month."));
        }

        var member = _studio.View.Members.All().FirstOrDefault(one => one.Id == _id);
        var open = member is null ? null : new OpenPayments(_studio.View, member);
        blocks.AddRange(Waiting(open).Select(line => new Block.Line(line)));
        if (_studio.IsSample)
        {
            blocks.Add(new Block.Line(Sentences.Invented(_studio).Trim()));
        }

        return new Reply(blocks, [.. Buttons(open)]);
    }

    /// <summary>Its lines, the last that was booked first; of all time, or of a month.</summary>
    /// <param name="month">2026-11; none: all.</param>
    /// <param name="stands">How it stands.</param>
    /// <param name="said">The message.</param>
    public Reply Entries(string? month, string stands, Phrase said)
    {
        if (month is not null)
        {
            return OfMonth(month, said);
        }

        var count = _studio.View.Accounts.Count(_id);
        var page = said.Has(RowPages.Page) ? said.Of(RowPages.Page) : 1;
        var lines = _studio.View.Accounts.Newest(_id, Needed(page));
        var after = Purses.Of(_studio).SumOf(_name);
        List<(AccountEntry Entry, string After)> rows = [];
        foreach (var line in lines)
        {
            rows.Add((line, SignedSum.Plain(after)));
            after -= line.Sum;
        }

        var widest = rows.Count == 0 ? 0 : rows.Max(row => row.After.Length);
        return RowPages.Of(
            stands,
            [],
            [new RowGroup("", [.. rows.Select(row => new Figure(
                What(row.Entry), $"{SignedSum.Of(row.Entry.Sum)} {row.After.PadLeft(widest)}"))])],
            [new Block.Line(count == 0 ? "No entries." : $"{Entries(count)}: each, and what stood after it.")],
            said,
            new Button("Balance", $"balance {Whose}"),
            new Button("This month", $"balance {AccountMonth.Now(_turn)} {Whose} entries"));
    }

    private static int Needed(double page) => (int)page * MostOnPage + 1;

    private static string Entries(int count) => count == 1 ? "1 entry" : $"{count} entries";

    private Reply OfMonth(string month, Phrase said)
    {
        var (from, until) = AccountMonth.Of(month, _studio);
        var lines = _studio.View.Accounts.Within(_id, from, until);
        var moved = lines.Aggregate(default(Money), (sum, line) => sum + line.Sum);
        return RowPages.Of(
            $"{AccountMonth.Words(month)}: {SignedSum.Of(moved)}{(_isOwn ? "" : " for " + _name)}",
            [],
            [new RowGroup("", [.. lines.Select(line => new Figure(What(line), SignedSum.Of(line.Sum)))])],
            [new Block.Line(lines.Count == 0 ? "No entries." : $"{Entries(lines.Count)}, by the day they are about.")],
            said,
            new Button("All entries", $"balance {Whose} entries"),
            new Button("What was used", $"balance {month} {Whose}"));
    }

    // 25 Nov used 20 ml white.
    private string What(AccountEntry entry)
    {
        var day = Chat.Replies.Show.Date(DateOnly.FromDateTime(WallTime.Of(entry.HappenedAt, _studio)), _turn);
        var writer = entry.WhoseId == _id ? entry.AuthorId : entry.WhoseId;
        var by = writer is { } other && other != _id ? _names[other] + ": " : "";
        var words = string.Join(' ', entry.Words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var what = $"{day} {(entry.IsUndo ? "undo " : "")}{by}{words}";
        return what.Length > LongestName ? what[..LongestName] : what;
    }

    // What moved it, as a member would say it; an undo belongs to what it takes back.
    private string Part(AccountEntry entry)
    {
        var first = entry.IsUndo ? -entry.Sum : entry.Sum;
        return entry.Kind switch
        {
            "bought" => "Bought",
            "paid" => first > default(Money) ? "Paid" : "Got",
            "count" => "Shares of counts",
            "sold" => "Shares of sales",
            _ => entry.WhoseId == _id ? "Used" : "Shares of use",
        };
    }

    private IEnumerable<string> Waiting(OpenPayments? open)
    {
        if (open is null)
        {
            yield break;
        }

        if (open.Paid is [var first, ..] paid)
        {
            yield return $"Unconfirmed: {first.Sum} to {open.Receiver(first)}{More(paid.Count)}.";
        }

        if (open.ToConfirm is [var oldest, ..] waiting)
        {
            yield return $"{(_isOwn ? "Did it come" : "To confirm")}: {oldest.Sum} from {open.Payer(oldest)}"
                + $"{More(waiting.Count)}{(_isOwn ? "?" : ".")}";
        }
    }

    private static string More(int count) => count > 1 ? $", {count - 1} more" : "";

    private IEnumerable<Button> Buttons(OpenPayments? open)
    {
        yield return new Button("Entries", $"balance {Whose} entries");
        if (_isOwn && open?.ToConfirm is [var oldest, ..])
        {
            yield return new Button("Yes, it came", open.Confirming(oldest));
        }

        if (_isOwn && Purses.Of(_studio).SumOf(_name) is { Cents: < 0 } owed)
        {
            yield return new Button("Paid to the kitty", $"paid {-owed} to kitty");
        }

        yield return new Button("This month's use", $"balance {AccountMonth.Now(_turn)} {Whose}");
    }
}
