using Dapper;
using StudioBot.Records.Recipes;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Tests.Schema;

/// <summary>What the tenth step makes of gels that stood among the readings of cups.</summary>
public sealed class GelStepTests : IDisposable
{
    private const int Before = 9;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("gels-");

    private string Path => System.IO.Path.Combine(folder.FullName, "old.db");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void Each_moves_into_its_own_table_and_readings_stay()
    {
        using (var connection = Dump.Raw(Path))
        {
            SchemaSteps.Apply(connection, Before);
            connection.Execute("""
                insert into member (id, name, role, joined_at) values (1, 'Mira', 'steward', 0);
                insert into recipe (id, name) values (1, 'topcoat');
                insert into act (id, kind, author_id, words, happened_at, written_at, undoes_id)
                values (1, 'mix', 1, 'mix', 0, 0, null), (2, 'batch', 1, 'batch', 1440000, 1440000, null),
                       (3, 'batch', 1, 'batch', 1500000, 1500000, null), (4, 'undo', 1, 'undo', 1600000, 1600000, 3);
                insert into batch (id, number, recipe_id, maker_id, made_at, made_microlitres, act_id)
                values (1, 14, 1, 1, 0, 60000, 1);
                insert into flow_reading (id, act_id, batch_id, cup, seconds, celsius, undone_id)
                values (1, 1, 1, 'ford4', 22, 21, null), (2, 1, 1, null, 1.5, null, null),
                       (3, 2, 1, 'gel', 1440, 21, null), (4, 3, 1, 'gel', 1500, null, 4);
                """);
        }

        using (var file = StudioFile.Open(Path))
        {
            Assert.Equal(
                [new BatchGel(14, 2, DateTimeOffset.FromUnixTimeSeconds(1440), TimeSpan.FromMinutes(24), Craft.Units.Temperature.FromCelsius(21))],
                file.Read(view => view.Batches.Gels(10)));
            Assert.Equal([22, 1.5], file.Read(view => view.Batches.Flows(10)).Select(flow => flow.Reading.Seconds.TotalSeconds));
        }

        using var after = Dump.Raw(Path);
        Assert.Equal("3:4", after.ExecuteScalar<string>("select act_id || ':' || undone_id from batch_gel where undone_id is not null"));
        Assert.Equal(0, after.ExecuteScalar<long>("select count(*) from flow_reading where cup = 'gel'"));
    }
}
