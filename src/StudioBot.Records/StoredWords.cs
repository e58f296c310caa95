using StudioBot.Craft.Units;

namespace StudioBot.Records;

/// <summary>How the cases of an enumeration are spelt in the file, which their names in the code may outlive.</summary>
internal sealed class StoredWords<T>(params (T Case, string Word)[] pairs)
    where T : struct, Enum
{
    /// <summary>The word for a case.</summary>
    public string Of(T which) => pairs.Single(pair => pair.Case.Equals(which)).Word;

    /// <summary>The case for a word; the table admits no others.</summary>
    public T Read(string word) => pairs.Single(pair => pair.Word == word).Case;
}

/// <summary>The spellings that more than one table uses.</summary>
internal static class StoredWords
{
    public static readonly StoredWords<UnitSystem> Units = new(
        (UnitSystem.Metric, "metric"), (UnitSystem.Us, "us"), (UnitSystem.Imperial, "imperial"));
}
