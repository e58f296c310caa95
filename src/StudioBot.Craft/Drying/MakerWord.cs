namespace StudioBot.Craft.Drying;

/// <summary>A maker's word on a piece.</summary>
/// <param name="Elapsed">Drying time since the pour by the room's clock (equivalent time).</param>
/// <param name="Says">What was found.</param>
public readonly record struct MakerWord(TimeSpan Elapsed, MakerSays Says)
{
    /// <summary>Whether it speaks for dry.</summary>
    public bool IsDry => Says is MakerSays.Dry or MakerSays.CoatCuredClear;

    /// <summary>
    /// The words that count, by time: of equal words within half an equivalent day the last, and a coat that cured
    /// clear in
    /// place of any earlier <c>dry</c> (common practice).
    /// </summary>
    public static IReadOnlyList<MakerWord> Counting(IEnumerable<MakerWord> words)
    {
        MakerWord[] ordered = [.. words.OrderBy(word => word.Elapsed)];
        var clear = Array.FindLastIndex(ordered, word => word.Says == MakerSays.CoatCuredClear);
        List<MakerWord> counting = [];
        for (var i = 0; i < ordered.Length; i++)
        {
            var word = ordered[i];
            var replaced = i < clear && word.IsDry;
            var repeated = Array.Exists(ordered[(i + 1)..], later =>
                later.IsDry == word.IsDry && later.Elapsed - word.Elapsed <= TimeSpan.FromHours(12));
            if (!replaced && !repeated)
            {
                counting.Add(word);
            }
        }

        return counting;
    }
}
