namespace StudioBot.Endurance.Tests;

/// <summary>The program as it is shipped: published once a run, ready to run on this machine.</summary>
internal static class PublishedProgram
{
    private static readonly Lazy<string> Published = new(Publish);

    /// <summary>Where it lies.</summary>
    public static string Path => Published.Value;

    private static string Publish()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        var target = System.IO.Path.Combine(folder.FullName, "published");
        var (works, said) = Publishing.Into(target, "--no-restore", "-c", folder.Parent!.Name);
        Assert.True(works, said);
        return System.IO.Path.Combine(target, "studiobot.dll");
    }
}
