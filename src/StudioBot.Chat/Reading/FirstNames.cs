namespace StudioBot.Chat.Reading;

/// <summary>Members of more names than one, who are called by the first of them.</summary>
internal static class FirstNames
{
    /// <summary>Each first name that is not another member's whole name, with whose it is; a word that means something
    /// everywhere calls nobody.</summary>
    public static IEnumerable<(string First, string Name)> Of(IReadOnlyList<string> members) => members
        .Select(name => (First: First(name), Name: name))
        .Where(one => one.First.Length < one.Name.Length
            && !members.Contains(one.First, StringComparer.OrdinalIgnoreCase)
            && !Fillers.Holds(one.First.ToLowerInvariant())
            && !Fillers.OpensQuestion(one.First.ToLowerInvariant())
            && UnitWords.Of(one.First.ToLowerInvariant()) is null);

    /// <summary>Of each member whose whole name is others' first name: those others.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Namesakes(IReadOnlyList<string> members) => members
        .Select(name => (Name: name, Others: members
            .Where(other => other.Length > name.Length
                && First(other).Equals(name, StringComparison.OrdinalIgnoreCase))
            .ToList()))
        .Where(one => one.Others.Count > 0)
        .ToDictionary(one => one.Name, one => (IReadOnlyList<string>)one.Others);

    private static string First(string name) => name.Split(' ')[0];
}
