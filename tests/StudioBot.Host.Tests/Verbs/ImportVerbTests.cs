using StudioBot.Host.Tests.Support;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Verbs;

/// <summary>By the built program, as a steward calls it.</summary>
public sealed class ImportVerbTests : IDisposable
{
    private const string Names = "material,form,lot,left,unit,value\n";

    private readonly TempFolder home = new();

    private string Data => Path.Combine(home.Path, "mine");

    public void Dispose() => home.Dispose();

    [Fact]
    public async Task A_table_opens_the_shelf_and_an_export_of_it_opens_another()
    {
        var first = await Import(home.Write("stock.csv", Names + "white,liquid,W-1,430.5,ml,20.00\nchalk,powder,,80,g,\n"), Data);
        Assert.Equal((0, ""), (first.Code, first.Error));
        Assert.StartsWith("2 lots, worth 20.00, on the shelf of ", first.Out, StringComparison.Ordinal);
        Assert.Contains("New materials: chalk.", first.Lines);

        Assert.Equal(0, (await Export(Data)).Code);
        var exported = Path.Combine(Data, "exports", "stock.csv");
        var other = Path.Combine(home.Path, "other");
        Assert.Equal(0, (await Import(exported, other)).Code);
        Assert.Equal(0, (await Export(other)).Code);
        Assert.Equal(File.ReadAllBytes(exported), File.ReadAllBytes(Path.Combine(other, "exports", "stock.csv")));
    }

    [Fact]
    public async Task It_is_taken_back_in_the_chat()
    {
        await Import(home.Write("stock.csv", Names + "white,liquid,W-1,430.5,ml,20.00\n"), Data);
        var ended = await BuiltProgram.Run(home, ["--data", Data], "undo\nstock white\n");
        Assert.Contains("import stock.csv", ended.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("W-1", ended.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ten_troubles_are_told_at_once_and_nothing_is_taken()
    {
        var rows = string.Concat(Enumerable.Range(2, 12).Select(line => $"white,liquid,,{line},litre,\n"));
        var ended = await Import(home.Write("stock.csv", Names + rows), Data);
        Assert.Equal((1, ""), (ended.Code, ended.Out));
        var told = ended.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(11, told.Length);
        Assert.Equal("Line 2, unit: “litre” is no unit of a material that is liquid. Write ml.", told[0]);
        Assert.Equal("And 2 more. Nothing was taken.", told[^1]);
        Assert.Equal(0, StudioFile.Glance(Path.Combine(Data, "studio.db"), view => view.Lots.All().Count));
    }

    [Fact]
    public async Task A_file_that_is_not_there_makes_no_studio()
    {
        var ended = await Import("none.csv", Data);
        Assert.Equal((64, ""), (ended.Code, ended.Out));
        Assert.Equal("There is no file none.csv. Name a table:  studiobot import stock.csv\n", ended.Error.ReplaceLineEndings("\n"));
        Assert.False(Directory.Exists(Data));
    }

    [Fact]
    public async Task A_folder_is_no_table()
    {
        var ended = await Import(home.Path, Data);
        Assert.Equal((64, ""), (ended.Code, ended.Out));
        Assert.Equal(
            $"{home.Path} is a folder, not a table. Name a table:  studiobot import stock.csv\n", ended.Error.ReplaceLineEndings("\n"));
    }

    private Task<Ended> Import(string file, string data) => BuiltProgram.Run(home, ["import", file, "--data", data]);

    private Task<Ended> Export(string data) => BuiltProgram.Run(home, ["--data", data], "export stock\n");
}
