using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Members;

namespace StudioBot.Records.Recipes;

/// <summary>What was mixed, by number.</summary>
public sealed class BatchRecords
{
    private readonly SqliteConnection connection;

    internal BatchRecords(SqliteConnection connection) => this.connection = connection;

    private const string Mixed = """
        select batch.number, recipe.name as recipe, member.name as maker, batch.made_at as madeAt,
               batch.made_microlitres as madeMicrolitres
        from batch
        join recipe on recipe.id = batch.recipe_id
        join member on member.id = batch.maker_id
        where $number is null or batch.number = $number
        order by batch.number
        """;

    /// <summary>All batches, by number.</summary>
    public IReadOnlyList<Batch> All() =>
        [.. connection.Query<Row>(Mixed, new { number = (int?)null }).Select(row => row.From())];

    /// <summary>The batch of this number; none where there is no such batch.</summary>
    public Batch? Find(int number) => connection.QuerySingleOrDefault<Row>(Mixed, new { number })?.From();

    private const string NewOne = """
        insert into batch (number, recipe_id, maker_id, made_at, made_microlitres)
        select coalesce(max(number), 0) + 1, $recipe, $maker, $at, $made
        from batch
        returning number
        """;

    /// <summary>Mixes a batch, which gets the next number.</summary>
    /// <exception cref="SqliteException">The amount is zero.</exception>
    public Batch Add(Recipe recipe, Member maker, DateTimeOffset at, Volume made)
    {
        var number = connection.ExecuteScalar<int>(NewOne, new
        {
            recipe = recipe.Id,
            maker = maker.Id,
            at = Booked.At(at),
            made = Booked.Microlitres(made),
        });
        return new Batch(number, recipe.Name, maker.Name, at, made);
    }

    private sealed record Row(long Number, string Recipe, string Maker, long MadeAt, long MadeMicrolitres)
    {
        public Batch From() => new(
            checked((int)Number), Recipe, Maker, Booked.Moment(MadeAt), Booked.Volume(MadeMicrolitres));
    }
}
