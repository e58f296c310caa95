using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;

namespace StudioBot.Records.Recipes;

/// <summary>What was mixed, by number.</summary>
public sealed class BatchRecords
{
    private readonly SqliteConnection connection;

    internal BatchRecords(SqliteConnection connection) => this.connection = connection;

    private const string Mixed = """
        select batch.number, batch.lot_id as lotId, batch.act_id as actId, recipe.name as recipe,
               member.name as maker, batch.made_at as madeAt, batch.made_microlitres as madeMicrolitres
        from batch
        join recipe on recipe.id = batch.recipe_id
        join member on member.id = batch.maker_id
        where batch.undone_id is null

        """;

    // Each its own query: one for all that also finds one would read all.
    private const string OfNumber = "and batch.number = $number";
    private const string ByNumber = "order by batch.number";

    /// <summary>All batches, by number.</summary>
    public IReadOnlyList<Batch> All() =>
        [.. connection.Query<Row>(Mixed + ByNumber).Select(row => row.From())];

    private const string AllNumbers = """
        select number
        from batch
        where undone_id is null
        order by number
        """;

    /// <summary>The numbers of all batches.</summary>
    public IReadOnlyList<int> Numbers() => [.. connection.Query<int>(AllNumbers)];

    /// <summary>The batch of this number; none where there is no such batch.</summary>
    public Batch? Find(int number) =>
        connection.QuerySingleOrDefault<Row>(Mixed + OfNumber, new { number })?.From();

    private const string NewOne = """
        insert into batch (number, recipe_id, maker_id, made_at, made_microlitres, act_id, lot_id)
        select coalesce(max(number), 0) + 1, $recipe, $maker, $at, $made, $act, $lot
        from batch
        returning number
        """;

    /// <summary>Mixes a batch, which gets the next number; what it takes and makes is booked with the stock.</summary>
    /// <param name="recipe">What it follows.</param>
    /// <param name="maker">Who mixed it.</param>
    /// <param name="at">When.</param>
    /// <param name="made">How much; above zero.</param>
    /// <param name="act">The act it hangs from.</param>
    /// <param name="lotId">The lot it became in the stock; none where its recipe makes no material.</param>
    /// <exception cref="SqliteException">The amount is zero.</exception>
    public Batch Add(Recipe recipe, Member maker, DateTimeOffset at, Volume made, Act act, long? lotId = null)
    {
        var number = connection.ExecuteScalar<int>(NewOne, new
        {
            recipe = recipe.Id,
            maker = maker.Id,
            at = Booked.At(at),
            made = Booked.Microlitres(made),
            act = act.Id,
            lot = lotId,
        });
        return new Batch(number, recipe.Name, maker.Name, at, made) { LotId = lotId, ActId = act.Id };
    }

    private sealed record Row(
        long Number, long? LotId, long? ActId, string Recipe, string Maker, long MadeAt, long MadeMicrolitres)
    {
        public Batch From() => new(
            checked((int)Number), Recipe, Maker, Booked.Moment(MadeAt), Booked.Volume(MadeMicrolitres))
        {
            LotId = LotId,
            ActId = ActId,
        };
    }
}
