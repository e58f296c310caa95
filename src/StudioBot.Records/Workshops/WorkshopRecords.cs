using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Workshops;

/// <summary>What is set aside on the shelf for workshops to come; undo of the act cancels one.</summary>
public sealed class WorkshopRecords
{
    private readonly SqliteConnection connection;

    internal WorkshopRecords(SqliteConnection connection) => this.connection = connection;

    private const string NewOne = """
        insert into workshop (act_id, starts_at, people, words)
        values ($act, $at, $people, $words)
        returning id
        """;

    private const string NewPart = """
        insert into workshop_part (workshop_id, material_id, microlitres, milligrams, pieces)
        values ($workshop, $material, $microlitres, $milligrams, $pieces)
        """;

    /// <summary>Sets aside what a workshop takes.</summary>
    /// <param name="startsAt">When it starts.</param>
    /// <param name="people">How many come; at least one.</param>
    /// <param name="words">As it was typed; not empty.</param>
    /// <param name="takes">What it takes, each material once.</param>
    /// <param name="act">The act it hangs from.</param>
    /// <exception cref="ArgumentException">A part is not measured as its material's form is.</exception>
    /// <exception cref="SqliteException">Nobody comes, a part is nothing, or a material stands twice.</exception>
    public Workshop Add(
        DateTimeOffset startsAt, int people, string words, IReadOnlyList<WorkshopPart> takes, Act act)
    {
        foreach (var part in takes)
        {
            Measure.Check(part.Material.Form, part.Amount);
        }

        var id = connection.ExecuteScalar<long>(
            NewOne, new { act = act.Id, at = Booked.At(startsAt), people, words });
        connection.Execute(NewPart, takes.Select(part =>
        {
            var (microlitres, milligrams, pieces) = AmountColumns.Of(part.Amount);
            return new { workshop = id, material = part.Material.Id, microlitres, milligrams, pieces };
        }));
        return new Workshop(
            id, act.Id, startsAt, people, words, takes.ToDictionary(part => part.Material.Id, part => part.Amount));
    }

    private const string NotYet = """
        select id, act_id as actId, starts_at as startsAt, people, words
        from workshop
        where undone_id is null
          and starts_at > $now
        order by starts_at, id
        """;

    private const string PartsNotYet = """
        select part.workshop_id as workshopId, part.material_id as materialId, part.microlitres, part.milligrams,
               part.pieces
        from workshop
        join workshop_part as part on part.workshop_id = workshop.id
        where workshop.undone_id is null
          and workshop.starts_at > $now
        order by part.workshop_id, part.material_id
        """;

    /// <summary>The workshops that start after this moment, the next first.</summary>
    public IReadOnlyList<Workshop> After(DateTimeOffset now)
    {
        var at = new { now = Booked.At(now) };
        var parts = connection.Query<PartRow>(PartsNotYet, at).ToLookup(row => row.WorkshopId);
        return [.. connection.Query<Row>(NotYet, at).Select(row => row.From(parts[row.Id]))];
    }

    private const string PartsBetween = """
        select part.material_id as materialId, workshop.starts_at as startsAt, part.microlitres, part.milligrams,
               part.pieces
        from workshop
        join workshop_part as part on part.workshop_id = workshop.id
        where workshop.undone_id is null
          and workshop.starts_at > $from
          and workshop.starts_at <= $until
        order by workshop.starts_at, workshop.id, part.material_id
        """;

    /// <summary>What workshops that started in a time were to take, the first first.</summary>
    /// <param name="from">After this moment.</param>
    /// <param name="until">Up to this one.</param>
    public IReadOnlyList<WorkshopTake> Between(DateTimeOffset from, DateTimeOffset until) =>
        [.. connection.Query<TakeRow>(PartsBetween, new { from = Booked.At(from), until = Booked.At(until) })
            .Select(row => row.From())];

    private sealed record TakeRow(
        long MaterialId, long StartsAt, long? Microlitres, long? Milligrams, long? Pieces)
    {
        public WorkshopTake From() => new(
            MaterialId,
            Booked.Moment(StartsAt),
            new AmountColumns(Microlitres, Milligrams, Pieces).Known());
    }

    private const string TakenOnes = """
        select part.material_id
        from workshop
        join workshop_part as part on part.workshop_id = workshop.id
        where workshop.act_id = $act
        order by part.material_id
        """;

    /// <summary>The materials that an act set aside.</summary>
    public IReadOnlyList<long> TakenBy(Act act) => [.. connection.Query<long>(TakenOnes, new { act = act.Id })];

    private sealed record Row(long Id, long ActId, long StartsAt, long People, string Words)
    {
        public Workshop From(IEnumerable<PartRow> parts) => new(
            Id,
            ActId,
            Booked.Moment(StartsAt),
            checked((int)People),
            Words,
            parts.ToDictionary(
                part => part.MaterialId,
                part => new AmountColumns(part.Microlitres, part.Milligrams, part.Pieces).Known()));
    }

    private sealed record PartRow(
        long WorkshopId, long MaterialId, long? Microlitres, long? Milligrams, long? Pieces);
}
