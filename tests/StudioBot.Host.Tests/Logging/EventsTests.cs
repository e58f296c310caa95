using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Logging;

/// <summary>Who watches the log goes by numbers: they are one each, every entry bears one, and the operators' page tells them all.</summary>
public sealed partial class EventsTests
{
    private static readonly IReadOnlyList<EventId> All =
        [.. typeof(Events).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (EventId)field.GetValue(null)!)];

    private static readonly string Sources = string.Join('\n', Directory
        .EnumerateFiles(Path.Combine(TopFolder.Path, "src", "StudioBot.Host"), "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"))
        .Select(File.ReadAllText));

    [Fact]
    public void No_two_events_share_a_number_or_a_name()
    {
        Assert.NotEmpty(All);
        Assert.Equal(All.Count, All.Select(one => one.Id).Distinct().Count());
        Assert.Equal(All.Count, All.Select(one => one.Name).Distinct().Count());
        Assert.All(All, one => Assert.InRange(one.Id, 100, 999));
    }

    [Fact]
    public void Every_entry_of_ours_names_its_event_and_every_event_has_an_entry()
    {
        var calls = Call().Matches(Sources).Select(match => match.Groups["first"].Value).ToList();
        Assert.NotEmpty(calls);
        Assert.All(calls, first => Assert.StartsWith("Events.", first, StringComparison.Ordinal));
        Assert.Equal(
            All.Select(one => "Events." + one.Name).Order(StringComparer.Ordinal),
            calls.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_operators_page_lists_each_with_its_number_level_and_name()
    {
        var told = File.ReadLines(Path.Combine(TopFolder.Path, "deploy", "operating.md"))
            .Select(line => Row().Match(line)).Where(match => match.Success)
            .Select(match => (match.Groups["id"].Value, match.Groups["level"].Value, match.Groups["name"].Value));
        var levels = Call().Matches(Sources).ToLookup(match => match.Groups["first"].Value, match => match.Groups["level"].Value);
        Assert.Equal(
            All.OrderBy(one => one.Id).Select(one => ($"{one.Id}", levels["Events." + one.Name].First(), one.Name!)),
            told);
    }

    [GeneratedRegex(@"\blog\.Log(?<level>Information|Warning|Error|Debug|Critical|Trace)\(\s*(?<first>[^\s,]+)")]
    private static partial Regex Call();

    [GeneratedRegex(@"^\| (?<id>\d{3}) \| (?<level>\w+) \| `(?<name>\w+)` \|")]
    private static partial Regex Row();
}
