namespace StudioBot.Craft.Practice;

/// <summary>One caution: in full once a day, then as its word.</summary>
/// <param name="Subject">What it is about.</param>
/// <param name="Line">The whole caution, short enough for a phone.</param>
/// <param name="Word">The same in one word or two.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record SafetyLine(SafetySubject Subject, string Line, string Word, Provenance Provenance);
