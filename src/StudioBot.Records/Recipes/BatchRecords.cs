using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;

namespace StudioBot.Records.Recipes;

/// <summary>What was mixed, by number.</summary>
public sealed class BatchRecords
{
    private readonly SqliteConnection connection;
    private readonly RememberedBy<int, IReadOnlyList<BatchFlow>> flows;
    private readonly RememberedBy<int, IReadOnlyList<BatchGel>> gels;

    internal BatchRecords(SqliteConnection connection)
    {
        this.connection = connection;
        flows = new(connection, ["flow_reading", "batch", "recipe"], most =>
            [.. connection.Query<FlowRow>(NewestFlows, new { most }).Select(row => row.From()).Reverse()]);
        gels = new(connection, ["batch_gel", "batch"], most =>
            [.. connection.Query<GelRow>(NewestGels, new { most }).Select(row => row.From())]);
    }

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

    private const string NewFlow = """
        insert into flow_reading (act_id, batch_id, cup, seconds, celsius)
        select $act, id, $cup, $seconds, $celsius
        from batch
        where number = $number
          and undone_id is null
        """;

    /// <summary>Keeps how a batch flowed.</summary>
    /// <param name="number">Which batch.</param>
    /// <param name="reading">A cup's seconds or a trace.</param>
    /// <param name="act">The act it hangs from.</param>
    /// <exception cref="SqliteException">The temperature is outside −20 to 50 °C.</exception>
    public void Flowed(int number, FlowReading reading, Act act) => connection.Execute(NewFlow, new
    {
        act = act.Id,
        number,
        cup = (reading as FlowReading.OfCup)?.Cup.Name,
        seconds = reading.Seconds.TotalSeconds,
        celsius = reading.At?.Celsius,
    });

    private const string NewestFlows = """
        select batch.number, recipe.name as recipe, reading.cup, reading.seconds, reading.celsius,
               act.happened_at as at, reading.act_id as actId
        from flow_reading as reading
        join act on act.id = reading.act_id
        join batch on batch.id = reading.batch_id
        join recipe on recipe.id = batch.recipe_id
        where reading.undone_id is null
          and batch.undone_id is null
        order by reading.id desc
        limit $most
        """;

    /// <summary>How batches flowed: the newest readings, in the order they were written.</summary>
    /// <param name="most">How many; one or more.</param>
    public IReadOnlyList<BatchFlow> Flows(int most) => flows.Of(most);

    private const string NewGel = """
        insert into batch_gel (act_id, batch_id, after_seconds, celsius)
        select $act, id, $seconds, $celsius
        from batch
        where number = $number
          and undone_id is null
        """;

    /// <summary>Keeps that a batch had gelled.</summary>
    /// <param name="number">Which batch.</param>
    /// <param name="after">How long after it was mixed; above zero.</param>
    /// <param name="warmth">How warm it was, where that is known.</param>
    /// <param name="act">The act it hangs from.</param>
    /// <exception cref="SqliteException">The time is not above zero, or the temperature outside −20 to 50 °C.
    /// </exception>
    public void Gelled(int number, TimeSpan after, Temperature? warmth, Act act) => connection.Execute(NewGel, new
    {
        act = act.Id,
        number,
        seconds = after.TotalSeconds,
        celsius = warmth?.Celsius,
    });

    private const string NewestGels = """
        with placed as (
            select gel.id, batch.number, gel.after_seconds as seconds, gel.celsius, gel.act_id as actId,
                   row_number() over (partition by batch.recipe_id order by gel.id desc) as place
            from batch_gel as gel
            join batch on batch.id = gel.batch_id
            where gel.undone_id is null
              and batch.undone_id is null)
        select placed.number, placed.seconds, placed.celsius, act.happened_at as at, placed.actId
        from placed
        join act on act.id = placed.actId
        where placed.place <= $most
        order by placed.id
        """;

    /// <summary>Which batches gelled: the newest reports of each recipe, in the order they were written.</summary>
    /// <param name="most">How many of a recipe; one or more.</param>
    public IReadOnlyList<BatchGel> Gels(int most) => gels.Of(most);

    private const string GelsOfOne = """
        select batch.number, gel.after_seconds as seconds, gel.celsius, act.happened_at as at, gel.act_id as actId
        from batch
        join batch_gel as gel on gel.batch_id = batch.id
        join act on act.id = gel.act_id
        where batch.number = $number
          and batch.undone_id is null
          and gel.undone_id is null
        order by gel.id
        """;

    /// <summary>What was said of one batch's gel, in the order it was written; one batch is seldom seen twice.
    /// </summary>
    /// <param name="number">Which batch.</param>
    public IReadOnlyList<BatchGel> GelsOf(int number) =>
        [.. connection.Query<GelRow>(GelsOfOne, new { number }).Select(row => row.From())];

    private sealed record GelRow(long Number, double Seconds, double? Celsius, long At, long ActId)
    {
        public BatchGel From() => new(
            checked((int)Number),
            ActId,
            Booked.Moment(At),
            TimeSpan.FromSeconds(Seconds),
            Celsius is { } celsius ? Temperature.FromCelsius(celsius) : null);
    }

    private sealed record FlowRow(
        long Number, string Recipe, string? Cup, double Seconds, double? Celsius, long At, long ActId)
    {
        public BatchFlow From()
        {
            var time = TimeSpan.FromSeconds(Seconds);
            Temperature? at = Celsius is { } celsius ? Temperature.FromCelsius(celsius) : null;
            return new BatchFlow(
                checked((int)Number),
                Recipe,
                Cup is { } name
                    ? new FlowReading.OfCup(CupCurves.Find(name)!, time, at)
                    : new FlowReading.OfTrace(new Trace(time), at),
                Booked.Moment(At),
                ActId);
        }
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
