using StudioBot.Chat.Asking;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.House;

namespace StudioBot.Chat.House;

/// <summary><c>studio units</c>: one thing that the studio has set, and how it is changed.</summary>
internal sealed class StudioOne : Ask
{
    private static readonly LoneWordSlot Which =
        new("a setting", ["units", "unit", "currency", "scoop", "sharing", "group"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "One thing the studio has set, and how it is changed.",
        [Which],
        ["studio units", "studio scoop", "studio sharing"]);

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        if (studio.View.Studio.Settings() is not { } settings)
        {
            return new Reply(new Block.Headline("No studio is founded here yet"));
        }

        var which = said.Of(Which) == "unit" ? "units" : said.Of(Which);
        var (now, hint, choices) = Of(which, settings, studio);
        var mayChange = turn.Who.IsSteward;
        List<Block> blocks = [new Block.Headline(now), new Block.Line(hint + Sentences.Invented(studio))];
        if (mayChange)
        {
            var way = which == "group" ? StudioHere.Line : Typed.In(turn, StudioSet.WayTo(which));
            blocks.AddRange([new Block.Line("Set with"), new Block.Sample(way)]);
        }
        else
        {
            blocks.Add(new Block.Line("Stewards set it."));
        }

        return new Reply(
            blocks,
            [
                .. (mayChange ? choices : []).Select(one => new Button(one.Label, $"studio {which} {one.Word}")),
                new Button("All that is set", "studio"),
            ]);
    }

    // What is set, what that means, and the few others it could be.
    private static (string Is, string Hint, IReadOnlyList<(string Label, string Word)> Others) Of(
        string which, StudioSettings settings, Studio studio)
    {
        switch (which)
        {
            case "units":
                return (
                    $"Units: {UnitsWord.Of(settings.Units)}",
                    "Of all who set none of their own (me units us).",
                    Others(
                        UnitsWord.Of(settings.Units),
                        [("metric", "metric"), ("US", "us"), ("imperial", "imperial")]));
            case "currency":
                return (
                    $"Currency: {settings.Currency}",
                    "Sums told before keep their figures.",
                    Others(settings.Currency, [("EUR", "eur"), ("USD", "usd"), ("GBP", "gbp"), ("CHF", "chf")]));
            case "scoop":
                return ($"A scoop: {Show.Volume(settings.Scoop)}", "What a scoop in a message is taken for.", []);
            case "sharing":
                var rule = SharingRule.Of(studio.View);
                return (
                    $"Borne {SharingRule.Said(rule)}",
                    "The differences of a count, and what all use.",
                    Others(rule, [("By use", SharingRule.ByUse), ("Equally", SharingRule.Equal),
                        ("By nobody", SharingRule.Nobody)]));
            default:
                return (
                    StudioGroup.Of(studio.View) is null ? "No group is the studio's yet" : "The studio has its group",
                    "It is the first in which a member was heard, until a steward says so in another.",
                    []);
        }
    }

    private static List<(string Label, string Word)> Others(
        string taken, IReadOnlyList<(string Label, string Word)> all) =>
        [.. all.Where(one => one.Label != taken && one.Word != taken)];
}
