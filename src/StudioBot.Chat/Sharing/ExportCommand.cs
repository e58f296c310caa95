using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Sharing;

/// <summary><c>export usage 2026-11</c>: a table for a spreadsheet.</summary>
internal sealed class ExportCommand() : Unopened(records: false)
{
    private static readonly ChoiceSlot What = new("what", "what to export", new Dictionary<string, string>
    {
        ["usage"] = "usage",
        ["use"] = "usage",
        ["money"] = "money",
        ["pieces"] = "pieces",
        ["stock"] = "stock",
        ["all"] = "all",
    });
    private static readonly PeriodSlot Month = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "export", Room.Sharing, "A table for a spreadsheet.",
        [What, Month],
        ["export usage 2026-11"]);
}
