using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>kitty</c>: what is in the kitty.</summary>
internal sealed class KittyCommand : Ask
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "kitty", Room.Sharing, "What is in the kitty.",
        [],
        ["kitty"]);

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
        return new Reply(
            [
                new Block.Headline(headline.TrimEnd()),
                new Block.Line((sum == default ? "Nothing is booked into it." : "All payments in, less all out.")
                    + Sentences.Invented(studio)),
            ],
            [new Button("My balance", "balance")]);
    }
}
