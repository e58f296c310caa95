using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>me units us</c>: your units and quiet hours.</summary>
internal sealed class MeSet() : Unopened(records: true)
{
    private static readonly ChoiceSlot Units = new("units", "units", ["metric", "us", "imperial"])
    {
        Leads = ["units", "unit"],
    };
    private static readonly QuietSlot Quiet = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "me", Room.House, "Your units and quiet hours.",
        [Units, Quiet],
        ["me units us", "me quiet 22-8"]);

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said.Has(Units) || said.Has(Quiet)
        ? null
        : new Misread("", "what to set is missing", Sheet.Examples[0]);
}
