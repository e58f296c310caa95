using System.Diagnostics;
using System.Net;
using Microsoft.Data.Sqlite;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Backups;
using Xunit.Abstractions;
using static StudioBot.Endurance.Tests.Patience;

namespace StudioBot.Endurance.Tests;

/// <summary>The published service over the file of each released version: brought up to date, ready, and it answers.</summary>
[Collection(Alone.Name)]
public sealed class UpgradeTests(ITestOutputHelper output)
{
    private const long Mira = 7001;

    private static readonly string Golden = Path.Combine(AppContext.BaseDirectory, "Golden");

    public static TheoryData<string> Released => [.. Directory.GetFiles(Golden).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void Each_version_up_to_this_program_s_is_among_them()
    {
        using var home = new TempFolder();
        var path = Path.Combine(home.Path, "studio.db");
        StudioFile.Open(path).Dispose();
        using var raw = new RawStudio(path);

        Assert.Equal(
            Enumerable.Range(1, (int)raw.One<long>("pragma user_version")),
            Directory.GetFiles(Golden).Select(file => int.Parse(Path.GetFileName(file)[..4], null)).Order());
    }

    [Theory]
    [MemberData(nameof(Released))]
    public async Task Over_a_released_file_it_becomes_ready_with_all_it_held_and_answers(string golden)
    {
        using var home = new TempFolder();
        await using var standIn = await StandIn.Start();
        var folder = Directory.CreateDirectory(Path.Combine(home.Path, "studio")).FullName;
        var path = Path.Combine(folder, "studio.db");
        Write(golden, path);
        var version = int.Parse(golden[..4], null);
        var held = Held(path);
        Assert.Contains(held, table => table.Value > 0);
        var (program, port) = (PublishedProgram.Path, FreePort.Any());

        var began = Stopwatch.GetTimestamp();
        using var service = BuiltProgram.Start(
            program,
            home,
            ["serve", "--data", folder],
            ("Telegram__Token", StandIn.Token),
            ("Telegram__ApiUrl", standIn.Url.ToString()),
            ("Health__Port", $"{port}"));
        service.StandardInput.Close();
        _ = service.StandardOutput.ReadToEndAsync();
        var said = service.StandardError.ReadToEndAsync();
        await Ready(port, service);
        var took = Stopwatch.GetElapsedTime(began);

        // The first version knew no accounts: to it she is a stranger.
        standIn.Updates.Add(StandInUpdates.Message(900, Mira, 900, "studio", at: TimeProvider.System.GetUtcNow()));
        var answer = version == 1 ? "Ask a steward of this studio for an invitation." : "Clock of ";
        await Until(() => standIn.Sent.Any(call => Crew.Says(call, answer)));
        using (Process.Start("kill", ["-TERM", $"{service.Id}"]))
        {
            await service.WaitForExitAsync(CancellationToken.None).WaitAsync(Enough);
        }

        Assert.True(service.ExitCode == 0, await said);
        output.Print($"upgrade: {golden} to ready in {took.TotalSeconds:0.00} s");
        using var raw = new RawStudio(path);
        var newest = raw.One<long>("pragma user_version");
        Assert.Equal(Directory.GetFiles(Golden).Length, newest);
        Assert.Equal("ok", raw.One<string>("pragma integrity_check"));
        Assert.All(held, table => Assert.True(
            raw.One<long>($"select count(*) from {table.Key}") >= table.Value, $"{table.Key} held {table.Value} rows."));
        var before = BackupFolder.Of(path).All().Where(backup => backup.Kind == BackupKind.Upgrade).Select(backup => backup.Version);
        Assert.Equal(version < newest ? [version] : [], before);
    }

    private static async Task Ready(int port, Process service)
    {
        using var http = new HttpClient();
        var began = Stopwatch.GetTimestamp();
        while (true)
        {
            Assert.False(service.HasExited, "It came to its end.");
            var words = "no answer";
            try
            {
                using var answer = await http.GetAsync(new Uri($"http://127.0.0.1:{port}/health/ready"));
                if (answer.StatusCode == HttpStatusCode.OK)
                {
                    return;
                }

                words = await answer.Content.ReadAsStringAsync();
            }
            catch (HttpRequestException)
            {
                // It does not listen yet.
            }

            Assert.True(Stopwatch.GetElapsedTime(began) < Enough, words);
            await Task.Delay(TimeSpan.FromMilliseconds(10), CancellationToken.None);
        }
    }

    // How many rows each table has whose rows are never taken away.
    private static Dictionary<string, long> Held(string path)
    {
        using var raw = new RawStudio(path);
        return raw.All("select name from sqlite_schema where type = 'table' order by name")
            .Where(table => table is "act" or "account" or "member" or "material" or "lot" or "stock_entry" or "piece"
                or "piece_event" or "recipe" or "air_reading" or "batch" or "money_entry")
            .ToDictionary(table => table, table => raw.One<long>($"select count(*) from {table}"));
    }

    // Some are dated the last of November 2026; a service whose clock stands before its books is not ready.
    private static void Write(string golden, string path)
    {
        var file = Path.Combine(Golden, golden);
        if (Path.GetExtension(golden) == ".db")
        {
            File.Copy(file, path);
            return;
        }

        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = File.ReadAllText(file).Replace("1796000", "1795650", StringComparison.Ordinal);
        command.ExecuteNonQuery();
    }
}
