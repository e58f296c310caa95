using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Importing;

/// <summary>What came of taking a file in.</summary>
public abstract record Imported
{
    private Imported()
    {
    }

    /// <summary>All of it is booked.</summary>
    /// <param name="By">The one act that everything hangs from.</param>
    /// <param name="Lots">How many lots came.</param>
    /// <param name="Named">The materials that the studio did not know before.</param>
    /// <param name="Worth">What all of it is worth.</param>
    public sealed record Done(Records.Acts.Act By, int Lots, IReadOnlyList<string> Named, Money Worth) : Imported;

    /// <summary>Nothing is booked.</summary>
    /// <param name="Troubles">Why, in the order of the file; at least one.</param>
    public sealed record Refused(IReadOnlyList<ImportTrouble> Troubles) : Imported;
}
