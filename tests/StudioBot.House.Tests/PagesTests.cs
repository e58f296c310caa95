using System.Text.RegularExpressions;
using StudioBot.Chat;

namespace StudioBot.House.Tests;

/// <summary>The pages say what is so.</summary>
public sealed partial class PagesTests
{
    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    [InlineData("deploy/CHANGELOG.md")]
    [InlineData("deploy/backups.md")]
    [InlineData("deploy/operating.md")]
    [InlineData("deploy/packages.md")]
    [InlineData("deploy/scale.md")]
    public void No_page_waits_to_be_filled_in(string page) =>
        Assert.DoesNotContain("@@", File.ReadAllText(Path.Combine(Solution.Top, page)), StringComparison.Ordinal);

    [Fact]
    public void The_readme_shows_every_question_that_is_answered()
    {
        var page = File.ReadAllText(Path.Combine(Solution.Top, "README.md"));
        Assert.All(
            Catalogue.Find().Menu(ChatKind.Private, isSteward: true),
            row => Assert.Contains($"`{row.Word}", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_promise_names_tests_that_there_are()
    {
        var promises = File.ReadLines(Path.Combine(Solution.Top, "README.md"))
            .SkipWhile(line => !line.StartsWith("| promise |", StringComparison.Ordinal)).Skip(2)
            .TakeWhile(line => line.StartsWith('|')).ToList();
        var tests = Solution.Sources("tests").Select(Path.GetFileNameWithoutExtension).ToHashSet();

        Assert.NotEmpty(promises);
        Assert.All(promises, promise =>
        {
            var named = TestClass().Matches(promise).Select(match => match.Groups[1].Value).ToList();
            Assert.NotEmpty(named);
            Assert.Empty(named.Except(tests!));
        });
    }

    [GeneratedRegex("`([A-Za-z]+Tests)`", RegexOptions.NonBacktracking)]
    private static partial Regex TestClass();
}
