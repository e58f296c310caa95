using Dapper;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Verbs;
using StudioBot.Records;
using StudioBot.Records.Sample;
using StudioBot.Records.Schema;
using StudioBot.Records.Tests;

namespace StudioBot.Host.Tests.Verbs;

/// <summary>Why the program does not start on a studio: one line with cause and way out, and a code that says the same to a supervisor.</summary>
public sealed class OpeningTests : IDisposable
{
    private const string Backup = "studio-20261126T042000Z-asked.db";
    private const string WayBack = "bring it back with  studiobot restore latest --data";

    private readonly TempFolder home = new();
    private readonly Typist typist = new();

    public static TheoryData<string> Openers => ["chat", "serve", "import", "sample"];

    // Those that begin on a file that is there; sample refuses it before it looks at it.
    public static TheoryData<string> OpenersOfFiles => ["chat", "serve", "import"];

    public void Dispose() => home.Dispose();

    [Theory]
    [MemberData(nameof(OpenersOfFiles))]
    public async Task A_damaged_file_is_told_with_its_newest_good_backup_and_the_way_back(string opener)
    {
        await FoundAndBackUp();
        var junk = File.ReadAllBytes(home.StudioPath);
        Array.Fill(junk, (byte)'x', 0, 9000);
        File.WriteAllBytes(home.StudioPath, junk);

        Says(
            65,
            $"{home.StudioPath} is damaged or no studio: SQLite Error 26: 'file is not a database'. "
                + $"The newest good backup is of 2026-11-26 04:20 UTC; {WayBack} {home.Path}",
            await Open(opener));
        Assert.Equal(junk, File.ReadAllBytes(home.StudioPath));
    }

    [Fact]
    public async Task Damage_deep_in_the_file_is_found_at_the_start()
    {
        await FoundAndBackUp();
        using (var file = new FileStream(home.StudioPath, FileMode.Open))
        {
            // From the second page on: the header, and with it the way to the schema, is whole.
            file.Position = 4096;
            file.Write(new byte[(int)file.Length - 4096]);
        }

        var ended = await Open("serve");
        Assert.Equal((65, ""), (ended.Code, ended.Out));
        Assert.StartsWith($"{home.StudioPath} is damaged or no studio: ", ended.Error, StringComparison.Ordinal);
        Assert.EndsWith($"{WayBack} {home.Path}\n", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_way_back_that_is_told_leads_back()
    {
        await FoundAndBackUp();
        var before = Dump.Of(home.StudioPath);
        home.Write("studio.db", new string('x', 9000));
        var told = (await Open("serve")).Error.Trim();

        var way = told[(told.LastIndexOf("studiobot ", StringComparison.Ordinal) + "studiobot ".Length)..].Split(' ');
        Assert.Equal(0, (await typist.Type(way)).Code);

        Assert.Equal(before, Dump.Of(home.StudioPath));
        Assert.Equal(0, (await Open("chat")).Code);
    }

    [Fact]
    public async Task The_newest_backup_that_is_good_is_named_and_no_damaged_one()
    {
        await FoundAndBackUp();
        typist.Clock.Advance(TimeSpan.FromDays(1));
        await typist.Type("backup", "--data", home.Path);
        File.AppendAllText(Path.Combine(home.Path, "backups", "studio-20261127T042000Z-asked.db"), "x");
        home.Write("studio.db", new string('x', 9000));
        Assert.Contains("The newest good backup is of 2026-11-26 04:20 UTC;", (await Open("serve")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Damage_without_a_good_backup_names_what_is_left_to_do()
    {
        home.Write("studio.db", new string('x', 9000));
        Says(
            65,
            $"{home.StudioPath} is damaged or no studio: SQLite Error 26: 'file is not a database'. There is no good backup in "
                + $"{Path.Combine(home.Path, "backups")}. Bring back one that is kept elsewhere:  studiobot restore FILE --data {home.Path}",
            await Open("serve"));
    }

    [Fact]
    public async Task A_database_of_something_else_is_left_as_it_is()
    {
        using (var raw = Dump.Raw(home.StudioPath))
        {
            raw.Execute("create table song (id integer)");
        }

        var ended = await Open("chat");
        Assert.Equal(65, ended.Code);
        Assert.StartsWith($"{home.StudioPath} is damaged or no studio: it holds something else. ", ended.Error, StringComparison.Ordinal);
        Assert.Equal(["create table song (id integer)"], Dump.SchemaOf(home.StudioPath).Select(sql => sql.ToLowerInvariant()));
    }

    [Theory]
    [MemberData(nameof(Openers))]
    public async Task A_studio_that_is_gone_is_not_begun_anew_beside_its_backups(string opener)
    {
        await FoundAndBackUp();
        File.Delete(home.StudioPath);
        var why = $"{home.StudioPath} is missing or empty, but {Path.Combine(home.Path, "backups")} is there. "
            + $"The newest good backup is of 2026-11-26 04:20 UTC; {WayBack} {home.Path}";
        Says(65, why, await Open(opener));
        Assert.False(File.Exists(home.StudioPath));
    }

    [Fact]
    public async Task Nor_is_one_that_was_emptied()
    {
        await FoundAndBackUp();
        home.Write("studio.db", "");
        Assert.Equal(65, (await Open("serve")).Code);
        Assert.Equal(0, new FileInfo(home.StudioPath).Length);
    }

    [Fact]
    public async Task Nor_is_one_that_was_only_kept_aside()
    {
        var kept = home.Write("studio.db.before-restore-20261126T042000Z", "what was there");
        Says(
            65,
            $"{home.StudioPath} is missing or empty, but {kept} is there. There is no good backup in {Path.Combine(home.Path, "backups")}. "
                + $"Bring back one that is kept elsewhere:  studiobot restore FILE --data {home.Path}",
            await Open("chat"));
        Assert.False(File.Exists(home.StudioPath));
    }

    [Theory]
    [MemberData(nameof(OpenersOfFiles))]
    public async Task A_file_of_a_newer_program_is_told_with_both_versions_and_left_as_it_is(string opener)
    {
        await FoundAndBackUp();
        using (var raw = Dump.Raw(home.StudioPath))
        {
            raw.Execute($"pragma user_version = {SchemaSteps.Newest + 2}");
        }

        var bytes = File.ReadAllBytes(home.StudioPath);
        Says(
            65,
            $"{home.StudioPath}: The studio's file has version {SchemaSteps.Newest + 2}, this program knows versions up to "
                + $"{SchemaSteps.Newest}. Use the newer program.",
            await Open(opener));
        Assert.Equal(bytes, File.ReadAllBytes(home.StudioPath));
    }

    [Theory]
    [MemberData(nameof(OpenersOfFiles))]
    public async Task A_second_instance_is_told_of_the_first(string opener)
    {
        using var first = StudioFile.Open(home.StudioPath);
        Says(75, $"Another studiobot has {home.StudioPath} open. Stop it first, or name another --data.", await Open(opener));
    }

    [Theory]
    [MemberData(nameof(Openers))]
    public async Task A_disk_that_is_not_mounted_is_told_and_not_filled_in(string opener)
    {
        var disk = Path.Combine(home.Path, "disk");
        Says(
            73,
            $"There is no folder {disk}. Mount its disk, or make it:  mkdir -p {disk}",
            await Open(opener, Path.Combine(disk, "studio")));
        Assert.False(Directory.Exists(disk));
    }

    [Theory]
    [MemberData(nameof(Openers))]
    public async Task A_file_on_the_way_to_the_folder_is_told_as_that(string opener)
    {
        var file = home.Write("disk", "a file where a folder should be");
        Says(73, $"{file} is a file, not a folder. Name another folder with --data.", await Open(opener, Path.Combine(file, "studio")));
    }

    [Theory]
    [MemberData(nameof(Openers))]
    public async Task A_folder_where_the_file_should_be_is_told_as_that(string opener)
    {
        Directory.CreateDirectory(home.StudioPath);
        Says(
            73,
            $"{home.StudioPath} is a folder; a studio is a file. Move it away, or name another folder with --data.",
            await Open(opener));
    }

    [Fact]
    public async Task Restoring_onto_a_folder_is_told_as_that_and_leaves_nothing_behind()
    {
        await FoundAndBackUp();
        var backup = Path.Combine(home.Path, "backups", Backup);
        var other = Path.Combine(home.Path, "other");
        var path = Path.Combine(other, "studio.db");
        Directory.CreateDirectory(path);
        Says(
            73,
            $"{path} is a folder; a studio is a file. Move it away, or name another folder with --data.",
            await typist.Type("restore", backup, "--data", other));
        Assert.Equal(["studio.db", "studio.db.lock"], Directory.GetFileSystemEntries(other).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task A_studio_that_can_t_be_backed_up_is_not_brought_up_to_date()
    {
        using (var raw = Dump.Raw(home.StudioPath))
        {
            SchemaSteps.Apply(raw, SchemaSteps.Newest - 1);
        }

        home.Write("backups", "a file where the folder should be");
        var ended = await Open("serve");
        Assert.Equal((73, ""), (ended.Code, ended.Out));
        Assert.StartsWith($"Can't write {home.StudioPath}: ", ended.Error, StringComparison.Ordinal);
        Assert.Contains(Path.Combine(home.Path, "backups"), ended.Error, StringComparison.Ordinal);
        Assert.Equal(1, ended.Error.Count(letter => letter == '\n'));
        Assert.Equal(SchemaSteps.Newest - 1, FileHeader.VersionOf(home.StudioPath));
    }

    [Fact]
    public void A_disk_that_takes_nothing_more_ends_what_was_begun_in_one_line()
    {
        using var heard = new StringWriter { NewLine = "\n" };
        var streams = new Streams(TextReader.Null, heard, heard, IsInteractive: false, HasColour: false);
        var place = new Workplace(new Machine(typist.Variables, home.Path, ""), streams, typist.Clock);
        var code = Opening.StudioIn(home.StudioPath, place, file =>
        {
            file.OnlyRead(true);
            file.Write(SampleStudio.WriteInto);
            return ExitCode.Done;
        });
        Assert.Equal(
            (ExitCode.CannotWrite, $"Can't write {home.StudioPath}: The studio's file may only be read. Put that right, or name another folder with --data.\n"),
            (code, heard.ToString()));
    }

    [Theory]
    [InlineData("chat")]
    [InlineData("serve")]
    [InlineData("import")]
    public async Task A_data_folder_that_is_a_file_is_a_trouble_of_the_settings(string opener)
    {
        var file = home.Write("disk", "a file where a folder should be");
        Says(78, $"Studio:Data = {file}: is a file, not a folder. Example: /srv/studio", await Open(opener, file));
    }

    [Fact]
    public async Task Settings_are_told_all_at_once_before_the_studio_is_made()
    {
        typist.Variables["Health__Port"] = "many";
        typist.Variables["Telegram__ApiUrl"] = "ftp://x";
        Says(
            78,
            """
            Telegram:ApiUrl = ftp://x: is no http or https address. Example: http://127.0.0.1:8081
            Health:Port = many: is no port: 1 to 65535, or 0 for none. Example: 8745
            """,
            await Open("serve"));
        Assert.Empty(Directory.GetFileSystemEntries(home.Path));
    }

    private Task<Ended> Open(string opener, string? data = null)
    {
        var folder = data ?? home.Path;
        typist.Variables.Remove("Telegram__Token");
        switch (opener)
        {
            case "chat":
                return typist.Type("--data", folder);
            case "sample":
                return typist.Type("sample", folder);
            case "import":
                return typist.Type("import", home.Write("stock.csv", "material,form,lot,left,unit,value\n"), "--data", folder);
            default:
                typist.Variables["Telegram__Token"] = StandIn.Token;
                return typist.Type("serve", "--data", folder);
        }
    }

    private async Task FoundAndBackUp()
    {
        using (var file = StudioFile.Open(home.StudioPath))
        {
            file.Write(SampleStudio.WriteInto);
        }

        Assert.Equal(0, (await typist.Type("backup", "--data", home.Path)).Code);
    }

    private static void Says(int code, string line, Ended ended) =>
        Assert.Equal((code, "", line + "\n"), (ended.Code, ended.Out, ended.Error));
}
