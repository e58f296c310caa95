using StudioBot.Chat.Replies;
using StudioBot.Host.Terminal;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Terminal;

public sealed class ExportsTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_file_is_written_beside_the_studio_s_and_says_where()
    {
        var path = Path.Combine(folder.Path, "exports", "usage.csv");
        Assert.Equal($"Written to {path}", Here.Write(new ReplyFile("usage.csv", "text/csv", [1, 2])));
        Assert.Equal([1, 2], File.ReadAllBytes(path));
    }

    [Fact]
    public void An_earlier_one_stays()
    {
        Here.Write(new ReplyFile("usage.csv", "text/csv", [1]));
        Assert.EndsWith("usage-2.csv", Here.Write(new ReplyFile("usage.csv", "text/csv", [2])), StringComparison.Ordinal);
        Assert.Equal([1], File.ReadAllBytes(Path.Combine(folder.Path, "exports", "usage.csv")));
    }

    [Theory]
    [InlineData("../../studio.db", "studio.db")]
    [InlineData("a/b\\c:d.csv", "a-b-c-d.csv")]
    [InlineData("...", "file")]
    public void No_name_leads_out_of_the_folder(string name, string own)
    {
        Here.Write(new ReplyFile(name, "text/csv", [1]));
        Assert.Equal(own, Path.GetFileName(Assert.Single(Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories))));
    }

    [Fact]
    public void Of_an_invented_studio_nothing_is_written() =>
        Assert.Equal(
            "(usage.csv, 2 bytes; of an invented studio no file is written.)",
            new Exports(Folder: null).Write(new ReplyFile("usage.csv", "text/csv", [1, 2])));

    [Fact]
    public void A_picture_takes_the_place_of_the_last_one_of_its_name()
    {
        var path = Path.Combine(folder.Path, "exports", "piece-17.png");
        Here.Write(ReplyFile.Picture("piece-17.png", () => [1]));
        Assert.Equal($"Picture in {path}", Here.Write(ReplyFile.Picture("piece-17.png", () => [2])));
        Assert.Equal([2], File.ReadAllBytes(path));
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(path)!));
    }

    [Fact]
    public void Of_an_invented_studio_no_picture_is_drawn_for_nothing() => Assert.Equal(
        "(piece-17.png; of an invented studio no file is written.)",
        new Exports(Folder: null).Write(ReplyFile.Picture(
            "piece-17.png", () => throw new InvalidOperationException("Nobody looks at it."))));

    private Exports Here => Exports.Beside(Path.Combine(folder.Path, "studio.db"));
}
