namespace StudioBot.Endurance.Tests;

/// <summary>Tests that hold a time to a figure: nothing else runs beside them.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class Alone
{
    /// <summary>What the collection is called.</summary>
    public const string Name = "alone";
}
