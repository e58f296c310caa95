namespace StudioBot.Craft.Drying;

/// <summary>What a piece's own words and weighings say, without any prior.</summary>
internal static class Evidence
{
    /// <summary>How sure a hand is of the day, in logs (common practice).</summary>
    private const double HandDeviation = 0.20;

    /// <summary>No word is taken as certain.</summary>
    private const double Floor = 1e-12;

    /// <summary>Adds the log likelihood of each node.</summary>
    public static void AddTo(Span<double> logs, DryingPiece piece)
    {
        foreach (var word in MakerWord.Counting(piece.Words))
        {
            AddWord(logs, word);
        }

        var weighings = UsableWeighings.Of(piece);
        if (weighings.AreUsed)
        {
            WeighingLikelihood.AddTo(logs, weighings.Used, piece);
        }
    }

    private static void AddWord(Span<double> logs, MakerWord word)
    {
        var at = Math.Log(Math.Max(word.Elapsed.TotalDays, 1e-9));
        var side = word.IsDry ? 1 : -1;
        for (var i = 0; i < logs.Length; i++)
        {
            logs[i] += Math.Log(Math.Max(Floor, NormalCurve.Below(side * (at - ReadyGrid.LogDays(i)) / HandDeviation)));
        }
    }
}
