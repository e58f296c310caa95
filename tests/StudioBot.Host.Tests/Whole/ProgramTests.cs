using System.Runtime.Versioning;
using System.Text.Json;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Members;

namespace StudioBot.Host.Tests.Whole;

public sealed class ProgramTests : IDisposable
{
    private const string Token = "123456789:TestOnlyTestOnlyTestOnlyTestOnly123";

    private readonly TempFolder home = new();

    [Fact]
    public async Task A_question_is_answered_and_nothing_is_created()
    {
        var ended = await BuiltProgram.Run(home, ["ask", "amounts 30cm panel bloom 6 colours"]);
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Contains("900 cm²", ended.Out, StringComparison.Ordinal); // 30 cm times 30 cm
        Assert.Empty(Directory.GetFileSystemEntries(home.Path));
    }

    [Theory]
    [InlineData("ratio 3;1")]
    [InlineData("frobnicate")]
    public async Task What_can_t_be_read_ends_with_two(string words) =>
        Assert.Equal(2, (await BuiltProgram.Run(home, ["ask", words])).Code);

    [Fact]
    public async Task What_would_record_is_shown_as_read_and_not_done()
    {
        var ended = await BuiltProgram.Run(home, ["ask", "used 20 ml white", "--json"]);
        Assert.Equal(2, ended.Code);
        var answer = JsonDocument.Parse(ended.Out).RootElement;
        Assert.Equal("write", answer.GetProperty("kind").GetString());
        Assert.Contains("nothing recorded", answer.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lines_are_read_one_for_one_and_answered_at_once()
    {
        using var process = BuiltProgram.Start(home, ["read", "--now", "2026-11-25T10:00", "--json"]);
        await process.StandardInput.WriteLineAsync("""{"id":"m1","chat":"private","text":"ratio 3:1 250 ml"}""");
        await process.StandardInput.FlushAsync();
        using var enough = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        var first = JsonDocument.Parse((await process.StandardOutput.ReadLineAsync(enough.Token))!).RootElement;
        Assert.Equal(("m1", "ask", "ratio"), (
            first.GetProperty("id").GetString(),
            first.GetProperty("kind").GetString(),
            first.GetProperty("command").GetString()));
        Assert.Equal("250", first.GetProperty("understood").GetProperty("volume_ml").GetString());

        await process.StandardInput.WriteLineAsync("""{"chat":"group","text":"lunch?"}""");
        await process.StandardInput.WriteLineAsync("no JSON");
        process.StandardInput.Close();
        var rest = (await process.StandardOutput.ReadToEndAsync(enough.Token)).Trim().Split('\n');
        Assert.Equal(["ignore", "error"], rest.Select(line =>
            JsonDocument.Parse(line).RootElement.GetProperty("kind").GetString()));
        await process.WaitForExitAsync(enough.Token);
        Assert.Equal(0, process.ExitCode);
        Assert.Empty(Directory.GetFileSystemEntries(home.Path));
    }

    [Theory]
    [InlineData("read", "--now", "soon")]
    [InlineData("dance")]
    [InlineData("ask")]
    public async Task A_wrong_command_line_ends_with_sixty_four_and_what_would_work(params string[] arguments)
    {
        var ended = await BuiltProgram.Run(home, arguments);
        Assert.Equal((64, ""), (ended.Code, ended.Out));
        Assert.Contains("Try  studiobot", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public async Task What_it_keeps_is_its_users_alone()
    {
        var data = Path.Combine(home.Path, "studio");
        Assert.Equal(0, (await BuiltProgram.Run(home, ["--data", data], "used 20 ml white\n")).Code);
        Assert.Equal(0, (await BuiltProgram.Run(home, ["backup", "--data", data])).Code);
        var kept = Directory.GetFileSystemEntries(data, "*", SearchOption.AllDirectories);
        Assert.Contains(Path.Combine(data, "studio.db"), kept);
        Assert.Contains(Path.Combine(data, "backups"), kept);
        Assert.All(kept.Append(data), path => Assert.Equal(
            UnixFileMode.None,
            File.GetUnixFileMode(path) & ~(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute)));
    }

    [Fact]
    public async Task A_piped_terminal_answers_plainly_without_prompt_and_ends_with_its_input()
    {
        var ended = await BuiltProgram.Run(home, [], "amounts 30cm panel \\\nbloom 6 colours\na\n");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.DoesNotContain('\e', ended.Out);
        Assert.Contains("900 cm²", ended.Out, StringComparison.Ordinal);
        Assert.Contains(ended.Lines, line => line.StartsWith("» ", StringComparison.Ordinal)); // a button, as a message
        Assert.DoesNotContain(ended.Lines, line => line.StartsWith("> ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_terminal_keeps_what_it_records_in_the_data_folder()
    {
        var data = Path.Combine(home.Path, "mine");
        var first = await BuiltProgram.Run(home, ["--data", data], "room 20C 58%\n");
        Assert.Equal((0, ""), (first.Code, first.Error));
        Assert.Contains("20 °C, 58 %", first.Out, StringComparison.Ordinal);

        var second = await BuiltProgram.Run(home, ["--data", data], "undo\n");
        Assert.Contains("Taken back", second.Out, StringComparison.Ordinal);
        Assert.Contains("room 20C 58%", second.Out, StringComparison.Ordinal);
        var (words, steward) = StudioFile.Glance(Path.Combine(data, "studio.db"), view => (
            view.Acts.These([2]).Select(act => act.Words), view.Members.ByAccount(MemberRecords.Terminal)));
        Assert.Equal(["room 20C 58%"], words); // the first act opened the books
        Assert.Equal(Role.Steward, steward?.Role);
    }

    [Fact]
    public async Task The_invented_studio_is_opened_on_request_and_leaves_nothing_behind()
    {
        var ended = await BuiltProgram.Run(home, ["--sample"], "piece 17\n");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Contains("17", ended.Lines[0], StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(home.Path, "studio.db", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task A_talk_is_rehearsed_and_leaves_nothing_behind()
    {
        var talk = home.Write("evening.talk", "pia: room 20C 58%\n> 20 °C, 58 %\n");
        var ended = await BuiltProgram.Run(home, ["rehearse", talk]);
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Contains("pia ← Studio: 20 °C, 58 %.", ended.Out, StringComparison.Ordinal);
        Assert.Equal([talk], Directory.GetFileSystemEntries(home.Path));
    }

    [Fact]
    public async Task A_talk_that_is_not_there_is_a_wrong_command_line() =>
        Assert.Equal(64, (await BuiltProgram.Run(home, ["rehearse", "nowhere.talk"])).Code);

    [Fact]
    public async Task Without_a_token_the_service_refuses_in_one_line()
    {
        var ended = await BuiltProgram.Run(home, ["serve"]);
        Assert.Equal((78, ""), (ended.Code, ended.Out));
        Assert.Equal(1, ended.Error.Count(letter => letter == '\n'));
    }

    [Fact]
    public async Task The_settings_are_shown_with_the_token_masked_and_all_errors_at_once()
    {
        var ended = await BuiltProgram.Run(
            home,
            ["config"],
            "",
            ("Telegram__Token", Token),
            ("Telegram__ApiUrl", "ftp://x"),
            ("STUDIOBOT__A__B", "c"));
        Assert.Equal(78, ended.Code);
        Assert.DoesNotContain("TestOnly", ended.Out + ended.Error, StringComparison.Ordinal);
        Assert.Contains("Telegram:ApiUrl = ftp://x", ended.Out, StringComparison.Ordinal);
        Assert.Contains("A:B", ended.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_settings_of_an_untouched_machine_are_right()
    {
        var ended = await BuiltProgram.Run(home, ["config"]);
        Assert.Equal(0, ended.Code);
        Assert.Contains(Path.Combine(home.Path, "data", "studiobot"), ended.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_invented_studio_is_written_once()
    {
        var folder = Path.Combine(home.Path, "try");
        Assert.Equal(0, (await BuiltProgram.Run(home, ["sample", folder])).Code);
        using (var file = StudioFile.Open(Path.Combine(folder, "studio.db")))
        {
            Assert.NotNull(file.Read(view => view.Studio.Settings()));
        }

        Assert.Equal(73, (await BuiltProgram.Run(home, ["sample", folder])).Code);
    }

    [Fact]
    public async Task A_studio_that_another_instance_has_is_left_alone()
    {
        using var file = StudioFile.Open(home.StudioPath);
        var ended = await BuiltProgram.Run(home, ["serve", "--data", home.Path], "", ("Telegram__Token", Token));
        Assert.Equal(75, ended.Code);
    }

    [Fact]
    public async Task A_damaged_file_is_never_started_on()
    {
        home.Write("studio.db", string.Concat(Enumerable.Repeat("this is no database ", 500)));
        var ended = await BuiltProgram.Run(home, ["serve", "--data", home.Path], "", ("Telegram__Token", Token));
        Assert.Equal(65, ended.Code);
    }

    [Fact]
    public async Task A_folder_that_can_t_be_written_is_told()
    {
        home.Write("file", "");
        var ended = await BuiltProgram.Run(
            home, ["serve", "--data", Path.Combine(home.Path, "file", "below")], "", ("Telegram__Token", Token));
        Assert.Equal(73, ended.Code);
    }

    [Fact]
    public async Task Help_names_every_verb_and_the_version_is_a_number()
    {
        var help = await BuiltProgram.Run(home, ["--help"]);
        Assert.All(["serve", "ask", "read", "sample", "rehearse", "config"], verb =>
            Assert.Contains("studiobot " + verb, help.Out, StringComparison.Ordinal));
        Assert.Matches(@"^studiobot \d+\.\d+\.\d+\s*$", (await BuiltProgram.Run(home, ["--version"])).Out);
    }

    public void Dispose() => home.Dispose();
}
