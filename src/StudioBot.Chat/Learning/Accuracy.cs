namespace StudioBot.Chat.Learning;

/// <summary>How good past estimates of one kind were.</summary>
/// <param name="Count">How many there were; at least one.</param>
/// <param name="Off">Half of them were off by no more than this.</param>
/// <param name="UsualOff">The same of common practice.</param>
/// <param name="Held">The share that came between what was told, 0 to 1; 0.8 is what is aimed at.</param>
internal sealed record Accuracy(int Count, double Off, double UsualOff, double Held)
{
    /// <summary>Of fewer nothing is told: chance would speak.</summary>
    public const int Enough = 5;

    /// <summary>Of these estimates; none where there are too few.</summary>
    public static Accuracy? Of(IReadOnlyCollection<PastGuess> guesses) => guesses.Count < Enough
        ? null
        : new Accuracy(
            guesses.Count,
            Median(guesses.Select(one => one.Off)),
            Median(guesses.Select(one => one.UsualOff)),
            guesses.Count(one => one.IsHeld) / (double)guesses.Count);

    private static double Median(IEnumerable<double> all)
    {
        List<double> ordered = [.. all.Order()];
        return (ordered[(ordered.Count - 1) / 2] + ordered[ordered.Count / 2]) / 2;
    }
}
