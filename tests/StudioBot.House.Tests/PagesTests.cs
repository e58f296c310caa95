using StudioBot.Chat;

namespace StudioBot.House.Tests;

/// <summary>The pages say what is so.</summary>
public sealed class PagesTests
{
    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    [InlineData("deploy/CHANGELOG.md")]
    [InlineData("deploy/backups.md")]
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
}
