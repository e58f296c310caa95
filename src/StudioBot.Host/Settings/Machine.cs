using System.Collections;

namespace StudioBot.Host.Settings;

/// <summary>What the program finds around itself: read once at start, so that everything after it can be
/// tested.</summary>
/// <param name="Variables">The environment variables.</param>
/// <param name="ProgramFolder">Where the program and its <c>config/</c> lie.</param>
/// <param name="PersonsData">Where the platform keeps a person's application data; empty where there is no such
/// place.</param>
internal sealed record Machine(
    IReadOnlyDictionary<string, string> Variables, string ProgramFolder, string PersonsData)
{
    /// <summary>This machine and this user.</summary>
    public static Machine Here() => new(
        Environment.GetEnvironmentVariables().Cast<DictionaryEntry>()
            .ToDictionary(entry => (string)entry.Key, entry => (string?)entry.Value ?? "", StringComparer.Ordinal),
        AppContext.BaseDirectory,
        Environment.GetFolderPath(
            Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify));
}
