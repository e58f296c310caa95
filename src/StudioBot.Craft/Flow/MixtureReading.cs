namespace StudioBot.Craft.Flow;

/// <summary>How a batch of a mixture flowed, and what it was thinned with by then.</summary>
/// <param name="Mixture">Which mixture: batches of one are alike but for how they are thinned.</param>
/// <param name="Batch">Which batch of it.</param>
/// <param name="Thinners">Each thinner's share of the volume, 0 to 1, by its name; whatever else is in it counts as the
/// mixture itself.</param>
/// <param name="Reading">Stirred; with the liquid's temperature, where it is known.</param>
public sealed record MixtureReading(
    string Mixture, int Batch, IReadOnlyDictionary<string, double> Thinners, FlowReading Reading);
