using Microsoft.Data.Sqlite;

namespace StudioBot.Records;

/// <summary>What is read often by a few keys and rarely changes: each read once, and anew once a row of its tables
/// changed.</summary>
/// <param name="connection">Where it is read.</param>
/// <param name="tables">All tables that it is read from.</param>
/// <param name="read">Reads what belongs to a key.</param>
internal sealed class RememberedBy<TKey, T>(SqliteConnection connection, string[] tables, Func<TKey, T> read)
    where TKey : notnull
{
    // More keys than any studio has materials.
    private const int Most = 400;

    private readonly Remembered<Dictionary<TKey, T>> values = new(connection, tables, () => []);

    /// <summary>What belongs to this key now.</summary>
    public T Of(TKey key)
    {
        var known = values.Value;
        if (!known.TryGetValue(key, out var value))
        {
            value = read(key);
            if (known.Count >= Most)
            {
                known.Clear();
            }

            known[key] = value;
        }

        return value;
    }
}
