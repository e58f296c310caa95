using Microsoft.Data.Sqlite;
using StudioBot.Records.Post;

namespace StudioBot.Records;

/// <summary>One transaction on the studio: all that is written through it stands together or not at all.</summary>
public sealed class StudioSession : StudioView
{
    internal StudioSession(SqliteConnection connection)
        : base(connection)
    {
        Offset = new ChatOffset(connection);
    }

    /// <summary>From where on the chat service is asked.</summary>
    public ChatOffset Offset { get; }
}
