using System.Reflection;

namespace StudioBot.House.Tests;

/// <summary>Who may lean on whom: arrows go down only.</summary>
public sealed class ArrowsTests
{
    private static readonly Dictionary<string, string[]> May = new()
    {
        ["StudioBot.Craft"] = [],
        // The last is the layer beneath Microsoft.Data.Sqlite: only there a running statement can be broken off.
        ["StudioBot.Records"] = ["StudioBot.Craft", "Microsoft.Data.Sqlite", "Dapper", "SQLitePCLRaw.core"],
        ["StudioBot.Chat"] = ["StudioBot.Craft", "StudioBot.Records", "SkiaSharp", "ScottPlot", "QRCoder"],
        ["studiobot"] =
            ["StudioBot.Craft", "StudioBot.Records", "StudioBot.Chat", "Telegram.Bot", "Polly", "Polly.Core", "Quartz"],
    };

    [Theory]
    [InlineData("StudioBot.Craft")]
    [InlineData("StudioBot.Records")]
    [InlineData("StudioBot.Chat")]
    [InlineData("studiobot")]
    public void A_project_leans_only_on_what_stands_below_it(string project)
    {
        var leans = Assembly.Load(project).GetReferencedAssemblies().Select(name => name.Name!)
            .Where(name => !IsFramework(name, project)).ToList();
        Assert.Empty(leans.Except(May[project]));
    }

    [Theory]
    [InlineData("StudioBot.Craft")]
    [InlineData("StudioBot.Chat")]
    public void The_core_touches_no_disk_no_network_and_no_process(string project)
    {
        string[] touching =
        [
            "System.Net.Http", "System.Net.Sockets",
            "System.IO.FileSystem", "System.Diagnostics.Process", "System.Console",
        ];
        Assert.Empty(Assembly.Load(project).GetReferencedAssemblies().Select(name => name.Name!).Intersect(touching));
    }

    // Microsoft.Win32.Primitives is the runtime's own: the exception of a program that can't be started.
    private static bool IsFramework(string name, string project) =>
        name.StartsWith("System", StringComparison.Ordinal) || name is "netstandard" or "mscorlib" or "Microsoft.Win32.Primitives"
        || (project == "studiobot" && name.StartsWith("Microsoft.Extensions.", StringComparison.Ordinal));
}
