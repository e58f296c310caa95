using System.Text.Json;
using System.Xml.Linq;

namespace StudioBot.House.Tests;

/// <summary>The page of packages is what the lock files and the packages themselves say.</summary>
public sealed class PackagesTests
{
    private static readonly string Store = Environment.GetEnvironmentVariable("NUGET_PACKAGES")
        ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");

    private static readonly string Told = Path.Combine(Solution.Top, "deploy", "packages.md");

    [Fact]
    public void The_page_lists_every_package_with_its_version_and_licence()
    {
        var made = Path.Combine(AppContext.BaseDirectory, "packages.md");
        File.WriteAllText(made, Page());
        Assert.True(File.ReadAllText(Told) == File.ReadAllText(made), $"deploy/packages.md is not what the lock files say; what they say stands in {made}");
    }

    // Who takes the program along must be free to hand it on.
    [Fact]
    public void What_is_shipped_is_under_licences_that_ask_for_no_more_than_to_be_named() =>
        Assert.Empty(Packages("src").Select(one => Licence(one.Name, one.Version)).Distinct()
            .Except(["MIT", "Apache-2.0", "BSD-3-Clause", "MIT-0"]));

    private static string Page() => string.Join('\n',
    [
        "# Packages", "",
        "With version and licence, as the lock files and the packages themselves say; a test holds this page to them.", "",
        "## Shipped with the program, or used to build it", "", .. Table("src"), "",
        "## Used by the tests only", "", .. Table("tests", but: Packages("src")), "",
    ]);

    private static IEnumerable<string> Table(string below, IEnumerable<(string Name, string Version)>? but = null) =>
        Packages(below).Except(but ?? [])
            .Select(one => Line(one.Name, one.Version))
            .Prepend("|---|---|---|").Prepend("| package | version | licence |");

    // The benchmarks' own packages are fetched with the benchmarks only: until then the page's word on their licence stands.
    private static string Line(string name, string version)
    {
        var begins = $"| {name} | {version} | ";
        return File.Exists(Nuspec(name, version)) ? $"{begins}{Licence(name, version)} |"
            : File.ReadLines(Told).FirstOrDefault(line => line.StartsWith(begins, StringComparison.Ordinal))
                ?? $"{begins}not known here: restore tests/StudioBot.Benchmarks |";
    }

    private static IEnumerable<(string Name, string Version)> Packages(string below) => Directory
        .EnumerateFiles(Path.Combine(Solution.Top, below), "packages.lock.json", SearchOption.AllDirectories)
        .SelectMany(file =>
        {
            using var locked = JsonDocument.Parse(File.ReadAllText(file));
            return locked.RootElement.GetProperty("dependencies").EnumerateObject()
                .SelectMany(target => target.Value.EnumerateObject())
                .Where(package => package.Value.GetProperty("type").GetString() != "Project")
                .Select(package => (package.Name, package.Value.GetProperty("resolved").GetString()!)).ToList();
        })
        .Distinct().OrderBy(one => one.Name, StringComparer.OrdinalIgnoreCase).ThenBy(one => one.Item2, StringComparer.Ordinal);

    private static string Nuspec(string name, string version) =>
        Path.Combine(Store, name.ToLowerInvariant(), version.ToLowerInvariant(), $"{name.ToLowerInvariant()}.nuspec");

    private static string Licence(string name, string version)
    {
        var told = XDocument.Load(Nuspec(name, version))
            .Root!.Elements().Single(part => part.Name.LocalName == "metadata").Elements().ToList();
        return told.FirstOrDefault(part => part.Name.LocalName == "license") is { } licence
            ? licence.Attribute("type")?.Value == "expression" ? licence.Value : $"file {licence.Value} in the package"
            : told.FirstOrDefault(part => part.Name.LocalName == "licenseUrl")?.Value ?? "none stated";
    }
}
