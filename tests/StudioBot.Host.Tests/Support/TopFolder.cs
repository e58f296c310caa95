namespace StudioBot.Host.Tests.Support;

/// <summary>Where the solution, its pages and what is deployed lie.</summary>
internal static class TopFolder
{
    public static string Path { get; } = Above(AppContext.BaseDirectory);

    public static string Read(string name) => File.ReadAllText(System.IO.Path.Combine(Path, name));

    private static string Above(string folder) => File.Exists(System.IO.Path.Combine(folder, "StudioBot.sln"))
        ? folder
        : Above(Directory.GetParent(folder.TrimEnd(System.IO.Path.DirectorySeparatorChar))?.FullName
            ?? throw new DirectoryNotFoundException("StudioBot.sln"));
}
