using StudioBot.Chat.Asking;
using StudioBot.Chat.Exporting;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>export usage 2026-11</c>: a table for a spreadsheet.</summary>
internal sealed class ExportCommand : Ask
{
    private const string All = "all";

    private static readonly MoneyTable Money = new();
    private static readonly IReadOnlyList<ExportTable> Tables =
        [new UsageTable(), Money, new PiecesTable(), new StockTable()];

    private static readonly ChoiceSlot What = new("what", "what to export", new Dictionary<string, string>
    {
        ["usage"] = "usage",
        ["use"] = "usage",
        ["money"] = "money",
        ["pieces"] = "pieces",
        ["stock"] = "stock",
        ["all"] = All,
    })
    {
        IsRequired = true,
    };

    private static readonly PeriodSlot Month = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "export", Room.Sharing, "A table for a spreadsheet.",
        [What, Month],
        ["export usage 2026-11", "export stock", "export all"])
    {
        More = "Usage, money, pieces or stock, one row an entry; sums of others only for stewards, none in a group.",
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var isGroup = turn.Chat == ChatKind.Group;
        var what = said.Of(What);
        if (isGroup && what == Money.Name)
        {
            return new Reply(
                new Block.Headline("Money goes out in private only"),
                new Block.Line("Anybody may read a group. Write to me in private:"),
                new Block.Sample("export money"))
            {
                IsTrouble = true,
            };
        }

        var scope = new ExportScope(studio.View, studio.Zone)
        {
            Month = said.Has(Month) ? said.Of(Month) : null,
            SumsOf = isGroup ? null : turn.Member?.Id,
            SumsOfAll = !isGroup && turn.Who.IsSteward,
            Currency = studio.View.Studio.Settings()?.Currency ?? "",
        };
        var export = what == All
            ? Export.Several(Tables.Where(table => !isGroup || table != Money), scope, turn.Local)
            : Export.One(Tables.Single(table => table.Name == what), scope);
        return export switch
        {
            { File: null } => TooLarge(what, turn),
            _ when export.Tables.All(table => table.Rows == 0) => Nothing(what, scope, studio),
            { File: var file } => new Reply(
            [
                new Block.Headline(file.Name),
                new Block.Line($"{Counted(export)}.{Whose(what, scope, isGroup)}{Sentences.Invented(studio)}"),
            ])
            {
                File = file,
            },
        };
    }

    private static string Counted(Export export) => Sentences.Capital(string.Join(", ", export.Tables.Select(one =>
        $"{one.Rows} {(one.Rows == 1 ? one.Table.Rows.One : one.Table.Rows.Many)}"
        + (export.Tables.Count > 1 && one.Table == Money ? " of money" : ""))));

    // What is not in it is said, so that nobody takes a part for the whole.
    private static string Whose(string what, ExportScope scope, bool isGroup) => (what, scope, isGroup) switch
    {
        ("stock", _, _) => "",
        (_, { SumsOfAll: true }, _) => "",
        (All, _, true) => " Without money: anybody may read a group.",
        (_, _, true) => " Without sums: anybody may read a group.",
        ("money", _, _) => " Yours only; those of all are for stewards.",
        _ => " Sums are yours only; those of all are for stewards.",
    };

    private static Reply Nothing(string what, ExportScope scope, Studio studio) => new(
        new Block.Headline($"Nothing to export: {(what == All ? "the books are" : what + " is")} empty"
            + (scope.Month is { } month ? $" in {month}" : "")),
        new Block.Line($"No file.{Sentences.Invented(studio)}"));

    private static Reply TooLarge(string what, Turn turn) => new(
        new Block.Headline("That is more than one file holds"),
        new Block.Line("Name a month:"),
        new Block.Sample($"export {what} {turn.Local:yyyy-MM}"))
    {
        IsTrouble = true,
    };
}
