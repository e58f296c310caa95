using StudioBot.Host.Rehearsal;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Rehearsal;

/// <summary>Every talk in <c>tests/talks</c>, played to its end.</summary>
public sealed class TalksTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "talks");

    public static TheoryData<string> Talks =>
        [.. Directory.GetFiles(Folder, "*.talk").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Talks))]
    public void It_plays_as_it_is_written(string name)
    {
        using var heard = new StringWriter();
        using var trouble = new StringWriter();
        using var player = new TalkPlayer(Studios.Practice, new TalkPage(heard, trouble, asJson: false, files: null));
        player.Play(TalkReader.Read(File.ReadLines(Path.Combine(Folder, name))));
        Assert.True(player.Failures == 0, trouble.ToString());
        Assert.NotEmpty(heard.ToString());
    }

    [Theory]
    [MemberData(nameof(Talks))]
    public void It_expects_something(string name) => Assert.Contains(
        TalkReader.Read(File.ReadLines(Path.Combine(Folder, name))), line => line is TalkLine.Must);
}
