using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Exporting;

/// <summary>Who gained and who gave what, one row a line of the book; what was undone is followed by its
/// opposite.</summary>
internal sealed class MoneyTable : ExportTable
{
    /// <inheritdoc/>
    public override string Name => "money";

    /// <inheritdoc/>
    public override (string One, string Many) Rows => ("line", "lines");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Columns { get; } =
        ["happened_at", "account", "member", "amount", "currency", "kind", "words", "act"];

    /// <inheritdoc/>
    public override IEnumerable<IReadOnlyList<Cell>> Of(ExportScope scope)
    {
        var names = scope.View.Members.Names();
        var entries = scope.View.Money.Entries()
            .Where(entry => scope.Holds(entry.HappenedAt) && scope.Tells(Member(entry)))
            .OrderBy(entry => entry.HappenedAt)
            .ToList();
        var acts = scope.View.Acts.These(entries.Select(entry => entry.ActId).Distinct())
            .ToDictionary(act => act.Id);
        return entries.Select(entry => (IReadOnlyList<Cell>)
        [
            Cell.Of(entry.HappenedAt, scope.Zone),
            Cell.Of(entry.Account switch
            {
                Account.OfMember => "member",
                Account.OfKitty => "kitty",
                _ => "studio",
            }),
            Cell.Of(Member(entry) is { } member ? names.GetValueOrDefault(member) : null),
            Cell.Of(entry.Sum),
            Cell.Of(scope.Currency),
            Cell.Of(acts[entry.ActId].Kind),
            Cell.Of(acts[entry.ActId].Words),
            Cell.Of(entry.ActId),
        ]);
    }

    private static long? Member(MoneyEntry entry) => (entry.Account as Account.OfMember)?.MemberId;
}
