using System.Text.Json;
using Microsoft.Extensions.Configuration;

namespace StudioBot.Host.Settings;

/// <summary>Where settings stand: <c>config/studiobot.json</c> beside the program, over it <c>settings.json</c> in the
/// data folder, over it the environment, over it the command line.</summary>
internal sealed class SettingSources
{
    /// <summary>The settings file as it is called in troubles.</summary>
    public const string FileName = "config/studiobot.json";

    /// <summary>The data folder's own settings file as it is called in troubles.</summary>
    public const string DataFileName = "settings.json in the data folder";

    private const string DataFile = "settings.json";
    private const string FileExample = """{ "Studio": { "Data": "/srv/studio" } }""";
    private const string DataFileExample = """{ "Health": { "Port": 8745 } }""";
    private const string Prefix = "STUDIOBOT__";
    private const string PrefixedName = "environment, " + Prefix;

    // Weakest first.
    private readonly List<(string Name, IConfiguration Values)> sources;
    private readonly List<SettingTrouble> troubles = [];

    /// <summary>The sources of this machine.</summary>
    /// <param name="machine">Its variables and folders.</param>
    /// <param name="dataOption">What stands after <c>--data</c>.</param>
    public SettingSources(Machine machine, string? dataOption)
    {
        sources =
        [
            (FileName, File(FileName, Path.Combine(machine.ProgramFolder, "config", "studiobot.json"), FileExample)),
            ("environment", Variables(machine, name => name.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase)
                ? null
                : name)),
            (PrefixedName, Variables(machine, name =>
                name.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase) ? name[Prefix.Length..] : null)),
            ("--data", Values(dataOption is null ? [] : [new(SettingKeys.Data, dataOption)])),
        ];

        // Which folder it is, the others say: so it comes last, and has its place above the program's file.
        if (DataFolder.Of(this, machine).Path is { Length: > 0 } folder)
        {
            var own = File(DataFileName, Path.Combine(folder, DataFile), DataFileExample);
            if (own[SettingKeys.Data] is { } elsewhere)
            {
                troubles.Add(new(
                    SettingKeys.Data,
                    elsewhere,
                    $"stands in {DataFileName}, which is found by it; name the folder elsewhere",
                    "--data /srv/studio"));
                own[SettingKeys.Data] = null;
            }

            sources.Insert(1, (DataFileName, own));
        }
    }

    /// <summary>Files that can't be read, and what may not stand in them.</summary>
    public IReadOnlyList<SettingTrouble> Troubles => troubles;

    /// <summary>The value that wins and where it stands; an empty one counts as not set.</summary>
    public (string? Value, string Origin) Find(string key)
    {
        foreach (var (name, values) in Enumerable.Reverse(sources))
        {
            if (values[key] is { } value && !string.IsNullOrWhiteSpace(value))
            {
                return (value.Trim(), name);
            }
        }

        return (null, "not set");
    }

    /// <summary>Names that stand in a file or behind the program's own prefix and mean nothing.</summary>
    public IEnumerable<(string Key, string Origin)> Unknown() =>
        from source in sources
        where source.Name is FileName or DataFileName or PrefixedName
        from pair in source.Values.AsEnumerable()
        where pair.Value is not null && !SettingKeys.All.Contains(pair.Key, StringComparer.OrdinalIgnoreCase)
        select (pair.Key, source.Name);

    private IConfigurationRoot File(string name, string path, string example)
    {
        if (!System.IO.File.Exists(path))
        {
            return Values([]);
        }

        try
        {
            using var file = System.IO.File.OpenRead(path);
            return new ConfigurationBuilder().AddJsonStream(file).Build();
        }
        catch (Exception no) when (no is JsonException or FormatException)
        {
            troubles.Add(new(name, "(the file)", no.GetBaseException().Message, example));
        }
        catch (UnauthorizedAccessException)
        {
            troubles.Add(new(name, "(the file)", "may not be read by this user", $"chmod u+r {path}"));
        }
        catch (IOException no)
        {
            troubles.Add(new(name, "(the file)", no.Message, example));
        }

        return Values([]);
    }

    private static IConfigurationRoot Variables(Machine machine, Func<string, string?> named) => Values(
        from variable in machine.Variables
        let name = named(variable.Key)
        where name is not null
        select KeyValuePair.Create(name.Replace("__", ":", StringComparison.Ordinal), variable.Value));

    // The last of two names that differ in case only wins: keys are read case-blind.
    private static IConfigurationRoot Values(IEnumerable<KeyValuePair<string, string>> values)
    {
        var kept = new Dictionary<string, string?>(StringComparer.OrdinalIgnoreCase);
        foreach (var (key, value) in values)
        {
            kept[key] = value;
        }

        return new ConfigurationBuilder().AddInMemoryCollection(kept).Build();
    }
}
