using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>kitty</c>: what is in the kitty.</summary>
internal sealed class KittyCommand : Ask
{
    private const int MostRows = 5;

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "kitty", Room.Sharing, "What is in the kitty.",
        [],
        ["kitty"])
    {
        More = "The shared cash, and what moved it this month.",
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var sum = Purses.Of(studio).InKitty;
        if (turn.Chat == ChatKind.Group)
        {
            return new Reply(
                new Block.Headline($"Kitty: {(sum == default ? "settled" : "open")}"),
                new Block.Line($"Sums are told in a private chat only.{Sentences.Invented(studio)}"));
        }

        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        var headline = sum < default(Craft.Costs.Money)
            ? $"The kitty is short of {-sum} {currency}"
            : $"In the kitty: {sum} {currency}";
        var moved = Moved(turn, studio);
        IEnumerable<Block> rows = moved.Count == 0 ? [] :
        [
            new Block.Line("This month, the newest first:"),
            FitRows.Of([.. moved.Take(MostRows)]),
        ];
        var more = moved.Count > MostRows ? $"And {moved.Count - MostRows} more. " : "";
        return new Reply(
            [
                new Block.Headline(headline.TrimEnd()),
                .. rows,
                new Block.Line($"{more}{(sum == default && moved.Count == 0
                    ? "Nothing is booked into it."
                    : "All payments in, less all out.")}{Sentences.Invented(studio)}"),
            ],
            [new Button("My balance", "balance me")]);
    }

    // What came in and went out, and by whom: each member sees it.
    private static List<Figure> Moved(Turn turn, Studio studio)
    {
        var names = studio.View.Members.Names();
        var (from, until) = AccountMonth.Of(AccountMonth.Now(turn), studio);
        return [.. studio.View.Accounts.OfKitty(from, until).Select(entry => new Figure(
            $"{Show.Day(DateOnly.FromDateTime(WallTime.Of(entry.HappenedAt, studio)))} "
                + $"{(entry.IsUndo ? "undo " : "")}{(entry.WhoseId is { } whose ? names[whose] : "")}",
            SignedSum.Of(-entry.Sum)))];
    }
}
