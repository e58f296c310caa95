namespace StudioBot.Endurance.Tests;

/// <summary>The program as operators get it: published once a run, with its own framework.</summary>
internal static class PublishedProgram
{
    private static readonly Lazy<string> Published = new(Publish);

    /// <summary>Where it lies.</summary>
    public static string Path => Published.Value;

    private static string Publish()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        var target = System.IO.Path.Combine(folder.FullName, "published");
        var (works, said) = Publishing.Into(target, "-c", folder.Parent!.Name, "--self-contained");
        Assert.True(works, said);
        return System.IO.Path.Combine(target, "studiobot");
    }
}
