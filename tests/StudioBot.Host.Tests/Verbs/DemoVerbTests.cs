using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;

namespace StudioBot.Host.Tests.Verbs;

public sealed class DemoVerbTests
{
    [Fact]
    public async Task A_month_of_the_invented_studio_leaves_its_pictures_label_and_calendar_and_says_where()
    {
        using var folder = new TempFolder();
        using var heard = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var place = new Workplace(
            new Machine(new Dictionary<string, string>(), AppContext.BaseDirectory, ""),
            new Streams(TextReader.Null, heard, error, IsInteractive: false, HasColour: false),
            TimeProvider.System);

        var code = await new DemoVerb().Run(new Invocation { Files = folder.Path }, place, CancellationToken.None);

        Assert.Equal((ExitCode.Done, ""), (code, error.ToString()));
        var kept = Directory.GetFiles(folder.Path).Select(path => Path.GetFileName(path)[4..]).Order(StringComparer.Ordinal).ToList();
        Assert.Superset(new HashSet<string> { "labels-22.pdf", "piece-22.png", "pieces.png", "week.png", "cups.png", "recipe.png" }, kept.ToHashSet());
        Assert.Contains(kept, name => name.EndsWith(".ics", StringComparison.Ordinal));
        Assert.EndsWith($"{kept.Count} pictures and files are in {folder.Path}\n", heard.ToString(), StringComparison.Ordinal);
    }
}
