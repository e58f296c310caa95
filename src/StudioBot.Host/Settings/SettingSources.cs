using Microsoft.Extensions.Configuration;

namespace StudioBot.Host.Settings;

/// <summary>Where settings stand: <c>config/studiobot.json</c>, over it the environment, over it the command
/// line.</summary>
internal sealed class SettingSources
{
    /// <summary>The settings file as it is called in troubles.</summary>
    public const string FileName = "config/studiobot.json";

    private const string Prefix = "STUDIOBOT__";

    // Weakest first.
    private readonly IReadOnlyList<(string Name, IConfiguration Values)> sources;

    /// <summary>The sources of this machine.</summary>
    /// <param name="machine">Its variables and folders.</param>
    /// <param name="dataOption">What stands after <c>--data</c>.</param>
    /// <exception cref="FormatException">The file is no JSON; the message names the place.</exception>
    public SettingSources(Machine machine, string? dataOption)
    {
        FilePath = Path.Combine(machine.ProgramFolder, "config", "studiobot.json");
        sources =
        [
            (FileName, File(FilePath)),
            ("environment", Variables(machine, name => name.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase)
                ? null
                : name)),
            ("environment, STUDIOBOT__", Variables(machine, name =>
                name.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase) ? name[Prefix.Length..] : null)),
            ("--data", Values(dataOption is null ? [] : [new(SettingKeys.Data, dataOption)])),
        ];
    }

    /// <summary>The settings file, whether or not it exists.</summary>
    public string FilePath { get; }

    /// <summary>The value that wins and where it stands; an empty one counts as not set.</summary>
    public (string? Value, string Origin) Find(string key)
    {
        foreach (var (name, values) in sources.Reverse())
        {
            if (values[key] is { } value && !string.IsNullOrWhiteSpace(value))
            {
                return (value.Trim(), name);
            }
        }

        return (null, "not set");
    }

    /// <summary>Names that stand in the file or behind the program's own prefix and mean nothing.</summary>
    public IEnumerable<(string Key, string Origin)> Unknown() =>
        from source in new[] { sources[0], sources[2] }
        from pair in source.Values.AsEnumerable()
        where pair.Value is not null && !SettingKeys.All.Contains(pair.Key, StringComparer.OrdinalIgnoreCase)
        select (pair.Key, source.Name);

    private static IConfigurationRoot File(string path)
    {
        try
        {
            return new ConfigurationBuilder().AddJsonFile(path, optional: true).Build();
        }
        catch (InvalidDataException trouble)
        {
            throw new FormatException(trouble.GetBaseException().Message, trouble);
        }
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
