using Xunit.Abstractions;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>Messages as people type them, each with what they expect to be understood.</summary>
public sealed class MessagesTests(ITestOutputHelper output)
{
    /// <summary>Rows whose reading is believed wrong, with why.</summary>
    private static readonly Dictionary<string, string> Disputed = [];

    [Theory]
    [InlineData("ask", 1.0)]
    [InlineData("write", 1.0)]
    [InlineData("confirm", 1.0)]
    [InlineData("error", 1.0)]
    [InlineData("ignore", 1.0)]
    public void People_are_understood(string kind, double share)
    {
        var rows = MessageRow.All.Where(row => row.ExpectedKind == kind && !Disputed.ContainsKey(row.Id)).ToList();
        var wrong = rows
            .Select(row => (Row: row, Why: MessageVerdict.Of(row)))
            .Where(result => result.Why is not null)
            .Select(result => $"{result.Row.Id} {result.Row.Text.ReplaceLineEndings("\\n")}: {result.Why}")
            .ToList();
        var right = 1 - (double)wrong.Count / rows.Count;
        var headline = $"{kind}: {rows.Count - wrong.Count} of {rows.Count} right, {right:P1}";
        var report = string.Join('\n', wrong.Prepend(headline));
        output.WriteLine(report);
        Assert.True(right >= share, report);
    }

    [Fact]
    public void At_most_ten_rows_are_disputed() => Assert.True(Disputed.Count <= 10);
}
