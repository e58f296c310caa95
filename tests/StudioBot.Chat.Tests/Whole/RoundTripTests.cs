namespace StudioBot.Chat.Tests.Whole;

/// <summary>What a button stands for is what its author agreed to.</summary>
public sealed class RoundTripTests
{
    [Fact]
    public void Every_message_that_is_understood_comes_back_from_its_line_the_same()
    {
        var rows = MessageRow.All.Where(row => row.ExpectedKind is "ask" or "write" or "confirm").ToList();
        var changed = rows.Select(row => (Row: row, Why: RoundTrip.Differs(row.Text, row.Chat)))
            .Where(result => result.Why is not null)
            .Select(result => $"{result.Row.Id} {result.Row.Text.ReplaceLineEndings("\\n")}: {result.Why}")
            .ToList();
        Assert.True(changed.Count == 0, $"{changed.Count} of {rows.Count}\n{string.Join('\n', changed)}");
    }
}
