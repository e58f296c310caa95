using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace StudioBot.House.Tests;

/// <summary>Habits that a reader of the sources may rely on.</summary>
public sealed partial class HabitsTests
{
    private const BindingFlags Declared = BindingFlags.DeclaredOnly
        | BindingFlags.Instance | BindingFlags.Static
        | BindingFlags.Public | BindingFlags.NonPublic;

    [Fact]
    public void Only_the_host_is_asynchronous() =>
        Assert.Empty(Solution.Projects.Where(project => project != "studiobot").SelectMany(Solution.Types)
            .SelectMany(type => type.GetMethods(Declared))
            .Where(method => method.GetCustomAttribute<AsyncStateMachineAttribute>() is not null)
            .Select(method => method.DeclaringType + "." + method.Name));

    [Fact]
    public void The_one_interface_with_one_implementation_is_the_wire() =>
        Assert.Equal(
            ["IWire"],
            Solution.Projects.SelectMany(Solution.Types).Where(type => type.IsInterface).Select(type => type.Name));

    [Fact]
    public void No_pattern_tracks_back() =>
        Assert.All(
            Solution.Projects.SelectMany(Solution.Types).SelectMany(type => type.GetMethods(Declared))
                .Select(method => method.GetCustomAttribute<GeneratedRegexAttribute>()).OfType<GeneratedRegexAttribute>(),
            pattern => Assert.True(pattern.Options.HasFlag(RegexOptions.NonBacktracking), pattern.Pattern));

    [Fact]
    public void A_pattern_is_made_when_the_program_is_built() =>
        Assert.All(
            Solution.Sources(),
            path => Assert.DoesNotMatch(MadeWhileRunning(), File.ReadAllText(path)));

    [Fact]
    public void Nothing_is_named_after_a_kind_of_code() =>
        Assert.DoesNotContain(
            Solution.Projects.SelectMany(Solution.Types).Select(type => type.Name),
            name => KindOfCode().IsMatch(name));

    [Fact]
    public void A_public_type_stands_in_a_file_of_its_name() =>
        Assert.Empty(Solution.Projects.SelectMany(Solution.Types)
            .Where(type => type is { IsPublic: true, IsNested: false })
            .Select(type => type.Name.Split('`')[0])
            .Distinct()
            .Except(Solution.Sources().Select(path => Path.GetFileNameWithoutExtension(path).Split('{')[0])));

    [Fact]
    public void A_namespace_is_its_folder() =>
        Assert.All(Solution.Sources().Where(path => Path.GetFileName(path) != "Program.cs"), path =>
        {
            var folder = Path.GetRelativePath(Path.Combine(Solution.Top, "src"), Path.GetDirectoryName(path)!)
                .Replace(Path.DirectorySeparatorChar, '.');
            Assert.Contains($"namespace {folder};", File.ReadLines(path));
        });

    [Fact]
    public void No_file_is_longer_than_four_hundred_lines() =>
        Assert.All(
            Solution.Sources().Concat(Solution.Sources("tests")),
            path => Assert.InRange(File.ReadLines(path).Count(), 0, 400));

    [Theory]
    [InlineData("src", 120)]
    [InlineData("tests", 160)]
    public void No_line_is_longer_than_a_screen_is_wide(string below, int columns) =>
        Assert.Empty(Solution.Sources(below).SelectMany(path => File.ReadLines(path)
            .Select((line, i) => (Place: $"{Path.GetFileName(path)}:{i + 1}", line.Length))
            .Where(line => line.Length > columns)
            .Select(line => line.Place)));

    [Fact]
    public void Only_records_speak_sql() =>
        Assert.All(
            Solution.Sources().Where(path => !path.Contains("StudioBot.Records", StringComparison.Ordinal)),
            path => Assert.DoesNotMatch(Sql(), File.ReadAllText(path)));

    [GeneratedRegex("(Manager|Helper|Util|Utils|Service|Processor|Dto)$")]
    private static partial Regex KindOfCode();

    [GeneratedRegex(@"new Regex\(|\bRegex\.(IsMatch|Match|Matches|Replace|Split|Count)\(", RegexOptions.NonBacktracking)]
    private static partial Regex MadeWhileRunning();

    [GeneratedRegex(@"\b(select|insert into|update|delete from)\s+\w+[\s\S]{0,80}\b(from|values|set)\s")]
    private static partial Regex Sql();
}
