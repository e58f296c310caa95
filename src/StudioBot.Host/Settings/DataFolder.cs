namespace StudioBot.Host.Settings;

/// <summary>Which folder is the data folder: named, else systemd's, else the platform's.</summary>
internal static class DataFolder
{
    private const string StateVariable = "STATE_DIRECTORY";

    /// <summary>The whole path and where it comes from; an empty path where nothing names one.</summary>
    public static (string Path, string Origin) Of(SettingSources sources, Machine machine)
    {
        var (named, origin) = sources.Find(SettingKeys.Data);
        if (named is not null)
        {
            return (Path.GetFullPath(named), origin);
        }

        // systemd lists several, parted by colons; ours is the first.
        if (machine.Variables.TryGetValue(StateVariable, out var state) && state.Length > 0)
        {
            return (Path.GetFullPath(state.Split(':')[0]), $"systemd, {StateVariable}");
        }

        return machine.PersonsData.Length > 0
            ? (Path.Combine(machine.PersonsData, "studiobot"), "the platform's place for a person's data")
            : ("", "not set");
    }
}
