using StudioBot.Chat.Asking;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;

namespace StudioBot.Chat.House;

/// <summary><c>studio accuracy</c>: past estimates against what happened.</summary>
internal sealed class StudioAccuracy : Ask
{
    // Of more kinds each is told more shortly.
    private const int MostAtLength = 2;

    private static readonly ChoiceSlot Topic = new("", "accuracy", ["accuracy"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "Past estimates against what happened.",
        [Topic],
        ["studio accuracy"])
    {
        More = "Of paint, ready days, orders, how long the shelf lasts, resin hours, gels and how thinned batches "
            + "flow, beside common practice.",
        AlsoSaying = ["accuracy"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        List<Kind> kinds = [.. All(turn, studio).OfType<Kind>()];
        if (kinds.Count == 0)
        {
            return new Reply(
                new Block.Headline("Too few to tell yet"),
                new Block.Line($"It takes {Accuracy.Enough} pours of which is on record what was mixed and what was "
                    + $"left, or {Accuracy.Enough} pieces that somebody called dry."),
                new Block.Sample("left 40 ml from 17"));
        }

        var own = kinds.Select(kind => new Block.Line(
            kinds.Count > MostAtLength ? kind.InShort : kind.AtLength));
        var full = Reply(kinds, own, kinds.Count > MostAtLength
            ? "Half were off by no more; 80 % is aimed at."
            : "Half of them were off by no more. Each is reckoned from what was known before it.", studio);
        return LineBudget.Of(full) <= LineBudget.Lines
            ? full
            : Reply(
                kinds,
                [new Block.Figures([.. kinds.Select(kind => kind.Row)])],
                "Half were off by no more, for what usual figures were off; then how many came as told.",
                studio);
    }

    private static Reply Reply(List<Kind> kinds, IEnumerable<Block> told, string reading, Studio studio) => new(
        [new Block.Headline(Answer(kinds)), .. told, new Block.Line(reading + Sentences.Invented(studio))],
        [new Button("What is set", "studio"), new Button("Techniques", "technique")]);

    private static IEnumerable<Kind?> All(Turn turn, Studio studio) =>
    [
        Kind.Of("films", "Paint", "pours", "mm", " a face", "common practice", 2, Paint(studio)),
        Kind.Of(
            "drying times",
            "Ready days",
            "pieces as poured",
            "days",
            "",
            "common practice",
            1,
            StudioDryings.Past(new PieceReckoning(studio.View, studio.Practice, turn.Now))),
        Kind.Of("delivery times", "Orders", "orders", "days", "", "what is set", 1, Deliveries.Past(studio)),
        Kind.Of(
            "resin hours",
            "Resin opens",
            "coats",
            "h",
            "",
            "the sheet",
            1,
            CurePaces.Past(studio.View, studio.Practice),
            isNoSooner: true),
        Kind.Of("gel times", "Gels", "cups", "min", "", "the sheet", 0, StudioGels.Past(studio)),
        Kind.Of(
            "days of cover",
            "Shelf lasts",
            "purchases",
            "days",
            "",
            "the last four weeks",
            1,
            StockCovers.Past(studio, turn.Now)),
        Kind.Of("flow", "Thinned batches", "readings", "%", "", "common practice", 1, StudioFlow.Past(studio)),
    ];

    private static IEnumerable<PastGuess> Paint(Studio studio) => studio.Practice.Techniques
        .SelectMany(technique => StudioFilms.Past(studio.Technique(technique.Name), studio));

    private static string Answer(List<Kind> kinds) => kinds.Where(kind => kind.Off < 0).ToList() switch
    {
        [] => kinds.Any(kind => kind.Off > 0)
            ? "Common practice does better so far"
            : "Common practice does as well so far",
        { Count: var better } when better < kinds.Count =>
            $"{better} of {kinds.Count} of your own figures do better",
        [var one] => $"Your own {one.Name} beat common practice",
        _ => "Your own figures beat common practice",
    };

    // What one kind of estimate comes to; off by less than the usual one: below zero.
    private sealed record Kind(string Name, double Off, string AtLength, string InShort, Figure Row)
    {
        // No sooner: what is told never comes before the sheet's, however early it came.
        public static Kind? Of(
            string name,
            string title,
            string of,
            string unit,
            string where,
            string usual,
            int decimals,
            IEnumerable<PastGuess> guesses,
            bool isNoSooner = false)
        {
            if (Accuracy.Of([.. guesses]) is not { } found)
            {
                return null;
            }

            var isSooner = isNoSooner && found.IsSooner;
            var (own, other) = (Show.Number(found.Off, decimals), Show.Number(found.UsualOff, decimals));
            return new Kind(
                name,
                found.Off - found.UsualOff,
                $"{title}, {found.Count} {of}: off by {own} {unit}{where}; {usual} by {other} {unit}. "
                    + (isSooner
                        ? $"{Of(found)} opened sooner than told: that is never before the sheet's hours."
                        : $"{Sentences.Capital(found.Came)}; 80 % is aimed at."),
                $"{title}, {found.Count}: off by {own} {unit}, {usual} {other}; "
                    + (isSooner ? $"{Of(found)} sooner than told." : $"{found.Came}."),
                new Figure(title, $"{own} for {other} {unit}, " + found switch
                {
                    _ when isSooner => $"{found.Sooner} sooner",
                    { Held: <= 0 } => "none",
                    { Held: >= 1 } => "all",
                    _ => Show.Share(found.Held),
                }));
        }

        private static string Of(Accuracy found) =>
            found.Sooner == found.Count ? "All" : $"{found.Sooner} of {found.Count}";
    }
}
