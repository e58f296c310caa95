using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Learning;

/// <summary>How good past estimates of one kind were.</summary>
/// <param name="Count">How many there were; at least one.</param>
/// <param name="Off">Half of them were off by no more than this.</param>
/// <param name="UsualOff">The same of common practice.</param>
/// <param name="Held">The share that came between what was told, 0 to 1; 0.8 is what is aimed at.</param>
/// <param name="Sooner">How many came before the earliest that was told.</param>
internal sealed record Accuracy(int Count, double Off, double UsualOff, double Held, int Sooner)
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
            guesses.Count(one => one.IsHeld) / (double)guesses.Count,
            guesses.Count(one => one.Happened < one.Low));

    /// <summary>Half and more came before the earliest that was told, as a quick resin does of which nothing is told
    /// earlier than its sheet has it.</summary>
    public bool IsSooner => 2 * Sooner >= Count;

    /// <summary>83 % came as told; all or none of them.</summary>
    public string Came => Held switch
    {
        <= 0 => "none came as told",
        >= 1 => "all came as told",
        _ => $"{Show.Share(Held)} came as told",
    };

    private static double Median(IEnumerable<double> all)
    {
        List<double> ordered = [.. all.Order()];
        return (ordered[(ordered.Count - 1) / 2] + ordered[ordered.Count / 2]) / 2;
    }
}
