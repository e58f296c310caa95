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
        More = "Of paint, ready days, orders, resin hours and how thinned batches flow, beside common practice.",
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

        var isShort = kinds.Count > MostAtLength;
        return new Reply(
            [
                new Block.Headline(Answer(kinds)),
                .. kinds.Select(kind => new Block.Line(isShort ? kind.InShort : kind.AtLength)),
                new Block.Line((isShort
                    ? "Half were off by no more; 80 % is aimed at."
                    : "Half of them were off by no more. Each is reckoned from what was known before it.")
                    + Sentences.Invented(studio)),
            ],
            [new Button("What is set", "studio"), new Button("Techniques", "technique")]);
    }

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
            CurePaces.Past(studio.View, studio.Practice)),
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
    private sealed record Kind(string Name, double Off, string AtLength, string InShort)
    {
        public static Kind? Of(
            string name,
            string title,
            string of,
            string unit,
            string where,
            string usual,
            int decimals,
            IEnumerable<PastGuess> guesses)
        {
            if (Accuracy.Of([.. guesses]) is not { } found)
            {
                return null;
            }

            var (own, other) = (Show.Number(found.Off, decimals), Show.Number(found.UsualOff, decimals));
            return new Kind(
                name,
                found.Off - found.UsualOff,
                $"{title}, {found.Count} {of}: off by {own} {unit}{where}; {usual} by {other} {unit}. "
                    + $"{Show.Share(found.Held)} came as told; 80 % is aimed at.",
                $"{title}, {found.Count}: off by {own} {unit}, {usual} {other}; {Show.Share(found.Held)} as told.");
        }
    }
}
