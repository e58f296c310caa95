using System.Text.Json;
using System.Text.RegularExpressions;
using StudioBot.Chat;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;
using StudioBot.Records.Schema;

namespace StudioBot.Host.Tests.Whole;

/// <summary>What operators get is what it is said to be: the image recipe, the compose file, the unit, the pages.</summary>
public sealed partial class DeployTests
{
    private const string OwnUser = "1654:1654";

    private static readonly IReadOnlyList<(string Word, string Said)> Recipe =
    [
        .. TopFolder.Read("Dockerfile").Replace("\\\n", " ", StringComparison.Ordinal).Split('\n')
            .Where(line => line.Length > 0 && !line.StartsWith('#'))
            .Select(line => line.Split(' ', 2))
            .Select(parts => (parts[0], parts[1].Trim())),
    ];

    // What follows the last FROM is what is run.
    private static readonly IReadOnlyList<(string Word, string Said)> Image =
        [.. Recipe.Skip(Recipe.Select((line, at) => (line.Word, At: at)).Last(line => line.Word == "FROM").At)];

    [Fact]
    public void The_image_is_built_from_bases_of_a_fixed_version() =>
        Assert.All(Recipe.Where(line => line.Word == "FROM"), line => Assert.Matches(@"^\S+:[0-9]+\.[0-9]+[\w.-]*( AS \w+)?$", line.Said));

    [Fact]
    public void The_image_is_not_run_as_root_and_its_data_are_that_user_s()
    {
        Assert.Equal(OwnUser, Assert.Single(Image, line => line.Word == "USER").Said);
        Assert.Equal("/data", Assert.Single(Image, line => line.Word == "VOLUME").Said);
        Assert.Contains(Image, line => line.Word == "COPY" && line.Said.Contains($"--chown={OwnUser} ", StringComparison.Ordinal)
            && line.Said.EndsWith(" /data", StringComparison.Ordinal));
        Assert.Contains("Studio__Data=/data", Assert.Single(Image, line => line.Word == "ENV").Said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_image_is_watched_by_the_program_s_own_verb()
    {
        Assert.EndsWith("CMD [\"/program/studiobot\", \"health\"]", Assert.Single(Image, line => line.Word == "HEALTHCHECK").Said, StringComparison.Ordinal);
        Assert.Equal("[\"/program/studiobot\"]", Assert.Single(Image, line => line.Word == "ENTRYPOINT").Said);
        Assert.Equal("[\"serve\"]", Assert.Single(Image, line => line.Word == "CMD").Said);
        Assert.Contains(VerbList.All, verb => verb.Word == "health");
        Assert.Contains(VerbList.All, verb => verb.Word == "serve");
    }

    [Fact]
    public void All_that_the_image_is_built_from_is_there_and_let_through_and_nothing_else_is()
    {
        var sources = Recipe.Where(line => line.Word == "COPY" && !line.Said.Contains("--from", StringComparison.Ordinal))
            .SelectMany(line => line.Said.Split(' ')[..^1]).ToList();
        Assert.Contains("src", sources);
        Assert.All(sources, source => Assert.True(Path.Exists(Path.Combine(TopFolder.Path, source)), source));
        var rules = TopFolder.Read(".dockerignore").Split('\n').Where(line => line.Length > 0 && !line.StartsWith('#')).ToList();
        Assert.Equal("*", rules[0]);
        Assert.Equal(sources.Order(StringComparer.Ordinal), rules.Where(rule => rule[0] == '!').Select(rule => rule[1..]).Order(StringComparer.Ordinal));
        Assert.Contains("deploy/token", rules);
    }

    [Fact]
    public void The_composed_service_can_write_its_volume_only_and_has_its_token_from_a_file()
    {
        var lines = TopFolder.Read("deploy/compose.yaml").Split('\n').Select(line => line.Trim()).ToList();
        Assert.Contains("read_only: true", lines);
        Assert.Contains("cap_drop: [ALL]", lines);
        Assert.Contains("volumes: [\"studio:/data\"]", lines);
        Assert.Contains("security_opt: [\"no-new-privileges:true\"]", lines);
        Assert.Contains("Telegram__TokenFile: /run/secrets/token", lines);
        Assert.DoesNotContain(lines, line => line.StartsWith("ports:", StringComparison.Ordinal) || line.StartsWith("privileged:", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains("latest", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains('\t'));
    }

    [Theory]
    [InlineData("Dockerfile")]
    [InlineData("deploy/compose.yaml")]
    [InlineData("deploy/studiobot.service")]
    public void Every_setting_that_is_named_there_is_one(string file)
    {
        var named = Variable().Matches(TopFolder.Read(file)).Select(match => match.Value.Replace("__", ":", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(named);
        Assert.Empty(named.Except(SettingKeys.All));
    }

    // From 64 on: what a new start does not mend. 0 to 2 are ends of single commands.
    [Fact]
    public void The_unit_does_not_start_anew_what_a_start_does_not_mend()
    {
        var codes = Assert.Single(Unit("RestartPreventExitStatus")).Split(' ').Select(int.Parse);
        Assert.Equal(Enum.GetValues<ExitCode>().Select(code => (int)code).Where(code => code >= 64).Order(), codes);
    }

    [Fact]
    public void The_unit_starts_the_service_tells_how_it_is_and_shows_the_token_to_nobody()
    {
        Assert.Equal("notify", Assert.Single(Unit("Type")));
        Assert.Equal("90s", Assert.Single(Unit("WatchdogSec")));
        Assert.EndsWith("/studiobot serve", Assert.Single(Unit("ExecStart")), StringComparison.Ordinal);
        Assert.Equal("token:/etc/studiobot/token", Assert.Single(Unit("LoadCredential")));
        Assert.Contains("Telegram__TokenFile=%d/token", Unit("Environment"));
        Assert.DoesNotContain(Unit("Environment"), value => value.StartsWith("Telegram__Token=", StringComparison.Ordinal));
        Assert.Equal("0", Assert.Single(Unit("LimitCORE")));
    }

    // Seen: refused the first of them, the runtime ends with “Failed to create CoreCLR”; and one that compiles while it
    // runs needs memory that is written and run.
    [Fact]
    public void The_unit_leaves_the_runtime_what_it_can_t_begin_without()
    {
        Assert.Equal("sched_setaffinity sched_setscheduler", Unit("SystemCallFilter").Last());
        Assert.Empty(Unit("MemoryDenyWriteExecute"));
    }

    [Fact]
    public void The_operators_page_lists_every_setting_and_only_those()
    {
        var told = TopFolder.Read("deploy/operating.md").Split('\n').Select(line => SettingRow().Match(line))
            .Where(match => match.Success).Select(match => match.Groups[1].Value);
        Assert.Equal(SettingKeys.All.Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_operators_page_marks_what_the_check_follows()
    {
        var page = TopFolder.Read("deploy/operating.md");
        Assert.All(
            ["publish", "install", "settings", "copy-backup", "upgrade", "report", "uninstall"],
            mark => Assert.Contains($"```sh {mark}\n", page, StringComparison.Ordinal));
        Assert.All(
            ["install", "log", "settings", "mistyped", "upgrade", "report"],
            mark => Assert.Contains($"```text {mark}\n", page, StringComparison.Ordinal));
    }

    [Fact]
    public void The_operators_page_shows_this_program_s_version_and_schema_and_the_version_before()
    {
        var page = TopFolder.Read("deploy/operating.md");
        var versions = Released().Matches(TopFolder.Read("deploy/CHANGELOG.md")).Select(match => match.Groups[1].Value).Take(2).ToList();
        Assert.Equal($"studiobot {versions[0]}", VersionVerb.Line);
        Assert.Equal(
            versions.Order(StringComparer.Ordinal),
            Versions().Matches(page).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal([$"{SchemaSteps.Newest}"], SchemaShown().Matches(page).Select(match => match.Groups[1].Value).Distinct());
    }

    [Fact]
    public void The_example_of_settings_holds_each_that_may_stand_there_as_it_is_unless_set()
    {
        using var folder = new TempFolder();
        File.Copy(Path.Combine(TopFolder.Path, "deploy", "settings.example.json"), Path.Combine(folder.Path, "settings.json"));
        var machine = new Machine(new Dictionary<string, string>(), folder.Path, "");
        var with = CheckSettings.Of(machine, folder.Path);
        File.Delete(Path.Combine(folder.Path, "settings.json"));
        var without = CheckSettings.Of(machine, folder.Path);

        Assert.Empty(with.Troubles);
        Assert.Equal(without.InEffect.Select(one => (one.Key, one.Shown)), with.InEffect.Select(one => (one.Key, one.Shown)));
        using var example = JsonDocument.Parse(TopFolder.Read("deploy/settings.example.json"));
        Assert.Equal(
            SettingKeys.All.Except([SettingKeys.Data, SettingKeys.Token]).Order(StringComparer.Ordinal),
            example.RootElement.EnumerateObject()
                .SelectMany(part => part.Value.EnumerateObject().Select(one => $"{part.Name}:{one.Name}")).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_page_of_sources_is_what_the_files_say() =>
        Assert.Equal(
            TopFolder.Read("config/sources.md").TrimEnd('\n').Split('\n'),
            SourcesVerb.Page(Path.Combine(TopFolder.Path, "config")));

    [Fact]
    public void The_readme_s_tables_of_messages_are_what_the_commands_say_of_themselves()
    {
        var lines = TopFolder.Read("README.md").Split('\n').ToList();
        var (begin, end) = (lines.IndexOf(MessagesVerb.Begin), lines.IndexOf(MessagesVerb.End));
        Assert.True(begin >= 0 && end > begin, "The README has not its two marks.");
        Assert.True(
            MessagesVerb.Page(Catalogue.Find()).SequenceEqual(lines[(begin + 1)..end]),
            "The README is behind the commands: deploy/write-messages writes it anew.");
    }

    [Fact]
    public void Every_message_that_is_an_example_of_a_command_stands_in_the_readme_once()
    {
        var rows = TopFolder.Read("README.md").Split(MessagesVerb.Begin)[1].Split(MessagesVerb.End)[0].Split('\n');
        Assert.All(Catalogue.Find().Forms.SelectMany(form => form.Sheet.Examples), example =>
            Assert.Single(rows, row => row.Split(" | ")[0].Contains($"`{example}`", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_verb_of_the_program_stands_in_the_readme()
    {
        var page = TopFolder.Read("README.md");
        Assert.All(
            VerbList.All.Where(verb => verb.Word is not ("" or "help" or "version")),
            verb => Assert.Contains($"| `{verb.Word}", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_number_of_the_trade_stands_in_the_page_of_sources_with_where_it_comes_from()
    {
        var page = TopFolder.Read("config/sources.md");
        var files = Directory.GetFiles(Path.Combine(TopFolder.Path, "config"), "*.json");
        Assert.NotEmpty(files);
        Assert.All(files, file => Assert.Contains($"## {Path.GetFileName(file)}\n", page, StringComparison.Ordinal));
        Assert.Equal(
            files.Sum(file => Provenance().Count(File.ReadAllText(file))),
            page.Split('\n').Count(line => line.StartsWith("| ", StringComparison.Ordinal)) - files.Length);
    }

    private static IEnumerable<string> Unit(string key) => TopFolder.Read("deploy/studiobot.service").Split('\n')
        .Where(line => line.StartsWith(key + "=", StringComparison.Ordinal)).Select(line => line[(key.Length + 1)..]);

    [GeneratedRegex(@"\b(Studio|Telegram|Health|Backup|Log)__\w+")]
    private static partial Regex Variable();

    [GeneratedRegex(@"^\| `(\w+:\w+)`")]
    private static partial Regex SettingRow();

    [GeneratedRegex(@"^## (\d+\.\d+\.\d+)$", RegexOptions.Multiline)]
    private static partial Regex Released();

    [GeneratedRegex(@"\bstudiobot (\d+\.\d+\.\d+)")]
    private static partial Regex Versions();

    [GeneratedRegex(@"\bschema (\d+)")]
    private static partial Regex SchemaShown();

    [GeneratedRegex("\"provenance\":")]
    private static partial Regex Provenance();
}
