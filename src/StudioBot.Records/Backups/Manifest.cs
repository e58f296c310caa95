using System.Text.Json;

namespace StudioBot.Records.Backups;

/// <summary>The small text beside a backup that tells what it holds: <c>studio-20261126T042000Z-daily.json</c>.
/// </summary>
internal static class Manifest
{
    private const string Kind = ".json";

    // A name for each table and some figures; more than that is none of ours.
    private const int MostBytes = 1 << 20;

    private static readonly JsonSerializerOptions Readable = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        NewLine = "\n",
        Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>Where the manifest of this file stands.</summary>
    public static string Beside(string file) => Path.ChangeExtension(file, Kind);

    /// <summary>Writes it, to the disk.</summary>
    public static void Write(string path, Backup backup)
    {
        File.WriteAllText(path, JsonSerializer.Serialize(backup, Readable) + "\n");
        Durable.Flush(path);
    }

    /// <summary>The manifest beside this file; none where there is none, or none that tells of this file.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static Backup? Of(string file)
    {
        var path = Beside(file);
        if (!File.Exists(path) || new FileInfo(path).Length > MostBytes)
        {
            return null;
        }

        try
        {
            var told = JsonSerializer.Deserialize<Backup>(File.ReadAllText(path), Readable);
            return told is { Sha256: not null, Rows: not null } && told.Name == Path.GetFileName(file) ? told : null;
        }
        catch (JsonException)
        {
            // Not written by us, or not to its end: then it proves nothing.
            return null;
        }
    }
}
