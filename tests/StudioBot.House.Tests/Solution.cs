using System.Reflection;

namespace StudioBot.House.Tests;

/// <summary>The assemblies and the sources they are made of.</summary>
internal static class Solution
{
    public static readonly string[] Projects = ["StudioBot.Craft", "StudioBot.Records", "StudioBot.Chat", "studiobot"];

    /// <summary>The top folder: the one in which the solution file stands.</summary>
    public static string Top { get; } = Above(AppContext.BaseDirectory);

    /// <summary>Every source file below src, without what the compiler makes.</summary>
    public static IEnumerable<string> Sources(string below = "src") => Directory
        .EnumerateFiles(Path.Combine(Top, below), "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));

    /// <summary>The types we wrote, without those the compiler makes.</summary>
    public static IEnumerable<Type> Types(string project) => Assembly.Load(project).GetTypes()
        .Where(type => type.Namespace?.StartsWith("StudioBot", StringComparison.Ordinal) == true)
        .Where(type => !type.Name.Contains('<', StringComparison.Ordinal));

    private static string Above(string folder)
    {
        if (File.Exists(Path.Combine(folder, "StudioBot.sln")))
        {
            return folder;
        }

        return Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar)) is { } parent
            ? Above(parent)
            : throw new DirectoryNotFoundException("StudioBot.sln");
    }
}
