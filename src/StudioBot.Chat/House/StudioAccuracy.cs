using StudioBot.Chat.Asking;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.House;

/// <summary><c>studio accuracy</c>: past estimates against what happened.</summary>
internal sealed class StudioAccuracy : Ask
{
    private static readonly ChoiceSlot Topic = new("", "accuracy", ["accuracy"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "Past estimates against what happened.",
        [Topic],
        ["studio accuracy"])
    {
        More = "Of paint and of ready days, beside common practice.",
        AlsoSaying = ["accuracy"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var paint = Accuracy.Of([.. Paint(studio)]);
        var days = Accuracy.Of(
            StudioDryings.Past(new PieceReckoning(studio.View, studio.Practice, turn.Now)));
        if (paint is null && days is null)
        {
            return new Reply(
                new Block.Headline("Too few to tell yet"),
                new Block.Line($"It takes {Accuracy.Enough} pours of which is on record what was mixed and what was "
                    + $"left, or {Accuracy.Enough} pieces that somebody called dry."),
                new Block.Sample("left 40 ml from 17"));
        }

        List<Block> blocks = [new Block.Headline(Answer(paint, days))];
        if (paint is not null)
        {
            blocks.Add(new Block.Line(
                $"Paint, {paint.Count} pours: off by {Show.Number(paint.Off, 2)} mm a face; common practice by "
                + $"{Show.Number(paint.UsualOff, 2)} mm. {Held(paint)}"));
        }

        if (days is not null)
        {
            blocks.Add(new Block.Line(
                $"Ready days, {days.Count} pieces as poured: off by {Show.Number(days.Off)} days; common practice by "
                + $"{Show.Number(days.UsualOff)} days. {Held(days)}"));
        }

        blocks.Add(new Block.Line("Half of them were off by no more. Each is reckoned from what was known before it."
            + Sentences.Invented(studio)));
        return new Reply(blocks, [new Button("What is set", "studio"), new Button("Techniques", "technique")]);
    }

    private static IEnumerable<PastGuess> Paint(Studio studio) => studio.Practice.Techniques
        .SelectMany(technique => StudioFilms.Past(studio.Technique(technique.Name), studio));

    private static string Answer(Accuracy? paint, Accuracy? days) =>
        (Better(paint), Better(days)) switch
        {
            (true, true) => "Your own figures beat common practice",
            (true, _) => "Your own films beat common practice",
            (_, true) => "Your own drying times beat common practice",
            _ when Worse(paint) || Worse(days) => "Common practice does better so far",
            _ => "Common practice does as well so far",
        };

    private static bool Better(Accuracy? one) => one is not null && one.Off < one.UsualOff;

    private static bool Worse(Accuracy? one) => one is not null && one.Off > one.UsualOff;

    private static string Held(Accuracy one) => $"{Show.Share(one.Held)} came as told; 80 % is aimed at.";
}
