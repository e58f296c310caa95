using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>studio scoop 25 ml</c>: what the studio sets, and its backup and wall.</summary>
internal sealed class StudioSet() : Unopened(records: true)
{
    private static readonly AmountSlot Scoop = new("a scoop", "scoop 25 ml")
    {
        Lead = "scoop",
        Only = Measure.Volume,
        Key = "scoop",
    };
    private static readonly ChoiceSlot Currency = new("currency", "a currency", new Dictionary<string, string>
    {
        ["eur"] = "EUR",
        ["usd"] = "USD",
        ["gbp"] = "GBP",
        ["chf"] = "CHF",
    })
    {
        Leads = ["currency"],
    };
    private static readonly QuietSlot Quiet = new();
    private static readonly ChoiceSlot Act = new("", "backup or board", ["backup", "board"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "What the studio sets, and its backup and wall.",
        [Scoop, Currency, Quiet, Act],
        ["studio scoop 25 ml", "studio currency EUR", "backup"])
    {
        AlsoSaying = ["backup", "board"],
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => Sheet.Takes.Any(said.Has)
        ? null
        : new Misread("", "what to set is missing", Sheet.Examples[0]);
}
