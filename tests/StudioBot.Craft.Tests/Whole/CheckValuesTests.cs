namespace StudioBot.Craft.Tests.Whole;

/// <summary>Every figure of check-values.csv, each with its source beside it, against the code.</summary>
public sealed class CheckValuesTests
{
    private const string Exact = "exact";

    public static TheoryData<string> Ids { get; } = [.. CheckRow.All.Select(row => row.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_code_gives_the_figure_of_the_source(string id)
    {
        var row = CheckRow.All.Single(row => row.Id == id);
        Assert.True(CheckRegistry.Functions.ContainsKey(row.Computation), $"Nothing computes {row.Computation}.");

        var answer = CheckRegistry.Functions[row.Computation](new Inputs(row.Given));

        if (row.Tolerance == Exact)
        {
            Assert.Equal(row.Expected, answer);
        }
        else
        {
            Assert.Equal(Inputs.Parse(row.Expected), Inputs.Parse(answer), Inputs.Parse(row.Tolerance));
        }
    }

    [Fact]
    public void Every_row_of_the_file_is_run_once()
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Whole", "check-values.csv"));

        Assert.Equal(lines.Skip(1).Count(line => line.Length > 0), Ids.Cast<object[]>().Count());
        Assert.Equal(CheckRow.All.Count, CheckRow.All.Select(row => row.Id).Distinct().Count());
    }

    [Fact]
    public void Every_row_names_its_source() =>
        Assert.DoesNotContain(CheckRow.All, row => string.IsNullOrWhiteSpace(row.Source));

    [Fact]
    public void Every_check_is_asked_for_by_a_row() =>
        Assert.Empty(CheckRegistry.Functions.Keys.Except(CheckRow.All.Select(row => row.Computation)));
}
