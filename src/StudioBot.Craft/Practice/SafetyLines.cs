namespace StudioBot.Craft.Practice;

/// <summary>The cautions, one for every subject.</summary>
public sealed class SafetyLines
{
    private readonly Dictionary<SafetySubject, SafetyLine> bySubject;

    /// <summary>All cautions and the line that closes them.</summary>
    /// <param name="lines">One for each subject.</param>
    /// <param name="sheetFirst">Said after any caution: the product's sheet and local rules come first.</param>
    /// <exception cref="ArgumentException">A subject has no line, or two.</exception>
    public SafetyLines(IReadOnlyList<SafetyLine> lines, Sourced<string> sheetFirst)
    {
        var subjects = Enum.GetValues<SafetySubject>();
        if (lines.Count != subjects.Length || lines.DistinctBy(line => line.Subject).Count() != lines.Count)
        {
            throw new ArgumentException("Every subject has one line.", nameof(lines));
        }

        bySubject = lines.ToDictionary(line => line.Subject);
        All = lines;
        SheetFirst = sheetFirst;
    }

    /// <summary>Every caution, in the order of the file.</summary>
    public IReadOnlyList<SafetyLine> All { get; }

    /// <summary>Said after any caution.</summary>
    public Sourced<string> SheetFirst { get; }

    /// <summary>The caution about this subject.</summary>
    public SafetyLine Of(SafetySubject subject) => bySubject[subject];
}
