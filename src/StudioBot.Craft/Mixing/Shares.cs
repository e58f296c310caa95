namespace StudioBot.Craft.Mixing;

/// <summary>The one check of what is a share of a whole.</summary>
internal static class Shares
{
    /// <summary>Nothing where it is between 0 and 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not.</exception>
    public static void Demand(double share, string name)
    {
        if (share is not (>= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(name, share, "A share is 0 to 1.");
        }
    }
}
