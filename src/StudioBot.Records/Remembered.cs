using Microsoft.Data.Sqlite;

namespace StudioBot.Records;

/// <summary>What is read often and rarely changes: read once, and anew once a row of its tables changed.</summary>
/// <remarks>A file's writer remembers from one session to the next; who only reads, for as long as its view lasts.
/// </remarks>
/// <param name="connection">Where it is read.</param>
/// <param name="tables">All tables that it is read from.</param>
/// <param name="read">Reads it.</param>
internal sealed class Remembered<T>(SqliteConnection connection, string[] tables, Func<T> read)
    where T : class
{
    private T? value;
    private long asOf;

    /// <summary>As it is now.</summary>
    public T Value
    {
        get
        {
            var now = (connection as StudioConnection)?.ChangesOf(tables);
            if (value is null || now is null || now != asOf)
            {
                (value, asOf) = (read(), now ?? 0);
            }

            return value;
        }
    }
}
