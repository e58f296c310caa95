using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Members;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Tests.Schema;

public sealed class SchemaStepsTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_new_file_has_seen_every_step()
    {
        Assert.Equal(SchemaSteps.Newest, Ask<int>("pragma user_version"));
        Assert.InRange(SchemaSteps.Newest, 1, int.MaxValue);
    }

    [Fact]
    public void Opening_again_changes_neither_the_schema_nor_what_it_holds()
    {
        studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning));
        var before = Shape();

        studio.Reopen();

        Assert.Equal(before, Shape());
        Assert.Single(studio.File.Read(view => view.Members.All()));
    }

    [Fact]
    public void A_file_of_a_newer_program_is_refused_with_both_versions_and_left_alone()
    {
        var newer = SchemaSteps.Newest + 1;
        studio.File.Dispose();
        Ask<object>($"pragma user_version = {newer}");
        var before = Shape();

        var refused = Assert.Throws<NewerStudioException>(() => StudioFile.Open(studio.Path));

        Assert.Equal((newer, SchemaSteps.Newest), (refused.Found, refused.Known));
        Assert.Equal(before, Shape());
        Ask<object>($"pragma user_version = {SchemaSteps.Newest}");
        studio.Reopen();
        Assert.Empty(studio.File.Read(view => view.Members.All()));
    }

    [Fact]
    public void A_glance_at_a_file_of_an_older_or_a_newer_program_is_refused()
    {
        studio.File.Dispose();

        Ask<object>($"pragma user_version = {SchemaSteps.Newest - 1}");
        Assert.Throws<OlderStudioException>(() => StudioFile.Glance(studio.Path, view => view.Members.All()));
        Ask<object>($"pragma user_version = {SchemaSteps.Newest + 1}");
        Assert.Throws<NewerStudioException>(() => StudioFile.Glance(studio.Path, view => view.Members.All()));
    }

    [Fact]
    public void Every_table_is_strict()
    {
        Assert.Empty(Rows("""
            select name
            from pragma_table_list
            where schema = 'main'
              and type = 'table'
              and strict = 0
              and name not like 'sqlite%'
            """));
    }

    [Fact]
    public void The_file_keeps_a_write_ahead_log()
    {
        Assert.Equal("wal", Ask<string>("pragma journal_mode"));
    }

    private List<string> Shape() => Rows("select sql from sqlite_schema where sql is not null order by name");

    private List<string> Rows(string query)
    {
        using var connection = Raw();
        return connection.Query<string>(query).AsList();
    }

    private T? Ask<T>(string query)
    {
        using var connection = Raw();
        return connection.ExecuteScalar<T>(query);
    }

    private SqliteConnection Raw() => new($"Data Source={studio.Path};Pooling=False");
}
