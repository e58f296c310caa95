using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Logging;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;
using StudioBot.Records;
using StudioBot.Records.Backups;

namespace StudioBot.Host.Tests.Verbs;

/// <summary>What is handed on to who looks for a fault holds figures and places, and nothing that anybody wrote.</summary>
public sealed class ReportVerbTests : IDisposable
{
    private const string Token = "123456789:TestOnlyTestOnlyTestOnlyTestOnly123";
    private const string Words = "Quillfeather sold the moonlit heron";

    private static readonly DateTimeOffset Now = new(2026, 11, 29, 9, 0, 0, TimeSpan.Zero);

    private readonly TempFolder home = new();
    private readonly StringWriter written = new();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task No_token_no_name_and_no_words_stand_in_it(bool isJson)
    {
        Fill();
        var log = new StringWriter();
        using (var lines = new LineLog(log, new FakeTimeProvider(Now), isJson))
        {
            lines.CreateLogger("StudioBot.Host.Turns.Clerk").LogError(
                Events.AnswerBroke, Broken(), "Answering {Words} of Quillfeather broke.", $"{Words}\n{Token}");
        }

        Assert.Equal(ExitCode.Done, await Report($"Nov 29 09:00:00 cupboard studiobot[7]: a line of {Words}\n{log}", "-"));
        var report = written.ToString();
        Assert.Contains("123456789:***", report, StringComparison.Ordinal);
        foreach (var secret in new[] { "TestOnly", "Quillfeather", "moonlit", "heron", "Amberwick" })
        {
            Assert.DoesNotContain(secret, report, StringComparison.OrdinalIgnoreCase);
        }

        // When, how grave, where and by which number; then the exception and the place that it left.
        Assert.Contains(
            "  2026-11-29T09:00:00.000Z Error StudioBot.Host.Turns.Clerk 300 | System.InvalidOperationException"
            + " | at StudioBot.Host.Tests.Verbs.ReportVerbTests.Broken",
            report,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_tells_version_settings_schema_rows_soundness_and_the_newest_backup()
    {
        Fill();
        await Report("");
        var report = written.ToString();
        Assert.Matches(@"studiobot \d+\.\d+\.\d+, ", report);
        Assert.Contains("Moment: 2026-11-29T09:00:00Z", report, StringComparison.Ordinal);
        Assert.Contains("Telegram:Token = 123456789:***  (environment)", report, StringComparison.Ordinal);
        Assert.Matches(@"  schema \d+; sound\n", report);
        Assert.Matches("  rows: .*account 1, .*member 1, ", report);
        Assert.Contains("newest: studio-20261129T090000Z-asked.db, schema ", report, StringComparison.Ordinal);
        Assert.Contains(", proven\n", report, StringComparison.Ordinal);
        Assert.Contains("Service: has no port to be asked at", report, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_damaged_backup_and_a_studio_that_can_t_be_read_are_told()
    {
        Fill();
        var backup = BackupFolder.Of(home.StudioPath).All()[0];
        File.AppendAllText(Path.Combine(home.Path, "backups", backup.Name), "x");
        File.WriteAllText(home.StudioPath, string.Concat(Enumerable.Repeat("no database ", 1000)));
        Assert.Equal(ExitCode.Done, await Report(""));
        Assert.Contains("  can't be read: ", written.ToString(), StringComparison.Ordinal);
        Assert.Contains("not good: Its SHA-256 is not that of its manifest.", written.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_log_that_is_not_there_is_told()
    {
        Assert.Equal(ExitCode.CommandLine, await Report("", "nowhere.log"));
        Assert.Equal($"There is no log nowhere.log.{Environment.NewLine}Try  studiobot report [LOG | -] [--data DIR]", written.ToString().Trim());
    }

    public void Dispose() => home.Dispose();

    private static InvalidOperationException Broken()
    {
        try
        {
            throw new InvalidOperationException($"{Words}\nat home with Quillfeather");
        }
        catch (InvalidOperationException broken)
        {
            return broken;
        }
    }

    private void Fill()
    {
        using var file = StudioFile.Open(home.StudioPath);
        Studios.Found(file, Now.AddDays(-1), (7, "Quillfeather"));
        file.Write(session => session.Studio.Change(session.Studio.Settings()! with { Name = "Amberwick" }));
        BackupFolder.Of(home.StudioPath).Make(BackupKind.Asked, Now);
    }

    private async Task<ExitCode> Report(string piped, params string[] words)
    {
        var machine = new Machine(
            new Dictionary<string, string> { ["Telegram__Token"] = Token, ["Studio__Data"] = home.Path, ["Health__Port"] = "0" },
            AppContext.BaseDirectory,
            home.Path);
        var streams = new Streams(new StringReader(piped), written, written, false, false);
        return await new ReportVerb().Run(
            new Invocation { Words = words }, new Workplace(machine, streams, new FakeTimeProvider(Now)), CancellationToken.None);
    }
}
