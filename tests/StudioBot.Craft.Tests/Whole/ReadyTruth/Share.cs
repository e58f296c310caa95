namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>A share of all pieces.</summary>
/// <param name="Percent">In percent.</param>
/// <param name="Chance">Its standard error, from studio to studio: pieces of one studio are alike.</param>
internal readonly record struct Share(double Percent, double Chance);
