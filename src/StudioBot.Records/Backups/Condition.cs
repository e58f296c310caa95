using Microsoft.Data.Sqlite;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Backups;

/// <summary>How a studio's file is, in figures only: nothing that anybody wrote is in it.</summary>
/// <param name="Version">The version of its schema.</param>
/// <param name="Rows">How many rows each table holds.</param>
/// <param name="Faults">All that is wrong with it, in plain lines; none where it is whole.</param>
public sealed record Condition(int Version, IReadOnlyDictionary<string, long> Rows, IReadOnlyList<string> Faults)
{
    /// <summary>Looks at all of a studio's file, also while another program writes to it.</summary>
    /// <exception cref="UnreadableStudioException">There is no such file, or it can't be read at all.</exception>
    public static Condition Of(string path)
    {
        try
        {
            using var reader = Connections.Reader(path);
            return new(SchemaSteps.VersionOf(reader), Proof.Rows(reader), Soundness.Of(reader));
        }
        catch (SqliteException why)
        {
            throw new UnreadableStudioException(why);
        }
    }
}
