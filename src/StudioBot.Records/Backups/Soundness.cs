using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Backups;

/// <summary>Whether a studio's file is whole: its schema is the known one of its version, the database finds no fault
/// in its pages and indexes, every reference leads somewhere, and the sums it keeps are those of its books.</summary>
internal static class Soundness
{
    // A file that is broken through and through has thousands; the first few tell as much.
    private const string Integrity = "pragma integrity_check(10)";

    private const string References = "pragma foreign_key_check";

    // From which version on it can be asked, what it counts, and what it means where that is not zero.
    private static readonly IReadOnlyList<(int Since, string Faults, string Means)> Sums =
    [
        (2, """
            select count(*)
            from (
                select lot_id
                from stock_entry
                group by lot_id
                having sum(coalesce(microlitres, milligrams, pieces)) < 0)
            """, "lots hold less than nothing"),
        (2, """
            select count(*)
            from (
                select act_id
                from money_entry
                group by act_id
                having sum(cents) <> 0)
            """, "acts of the money's book do not add up to zero"),
        (4, """
            select count(*)
            from (
                select lot_id, material_id
                from (
                    select lot_id, material_id, units, cents
                    from lot_sum
                    union all
                    select lot_id, material_id, -coalesce(microlitres, milligrams, pieces), -cents
                    from stock_entry)
                group by lot_id, material_id
                having sum(units) <> 0 or sum(cents) <> 0)
            """, "lots are not the sum of their lines"),
        (4, """
            select count(*)
            from lot
            where not exists (select 1 from lot_sum where lot_sum.lot_id = lot.id)
            """, "lots have no sum"),
        (4, """
            select count(*)
            from (
                select account, member_id
                from (
                    select account, member_id, cents
                    from money_sum
                    union all
                    select account, coalesce(member_id, 0), -cents
                    from money_entry)
                group by account, member_id
                having sum(cents) <> 0)
            """, "balances are not the sum of their lines"),
        (6, """
            select count(*)
            from piece_standing as told
            left join piece_stand as kept on kept.piece_id = told.piece_id
            where kept.stage is not told.stage
               or told.stage is not null and kept.shelf_id is not told.shelf_id
            """, "pieces do not stand where their lines leave them"),
    ];

    /// <summary>All that is wrong, in plain lines; none where the file is whole.</summary>
    public static IReadOnlyList<string> Of(SqliteConnection connection)
    {
        try
        {
            return Foreign(connection) is { } foreign ? [foreign]
                : Broken(connection) is [_, ..] broken ? broken
                : [.. OffSums(connection)];
        }
        catch (SqliteException broken)
        {
            return [broken.Message];
        }
    }

    // A schema that is not ours is not read any further: what stands in it could do what it likes.
    private static string? Foreign(SqliteConnection connection)
    {
        var version = SchemaSteps.VersionOf(connection);
        return version < 1 || version > SchemaSteps.Newest ? $"Version {version} of the schema is unknown here."
            : SchemaShape.Of(connection) != SchemaShape.Of(version) ? $"The schema is not that of version {version}."
            : null;
    }

    private static List<string> Broken(SqliteConnection connection)
    {
        var found = connection.Query<string>(Integrity).Where(line => line != "ok").ToList();
        if (found.Count == 0 && connection.Query(References).Any())
        {
            found.Add("Lines refer to what is not there.");
        }

        return found;
    }

    private static IEnumerable<string> OffSums(SqliteConnection connection)
    {
        var version = SchemaSteps.VersionOf(connection);
        foreach (var (since, faults, means) in Sums)
        {
            if (version >= since && connection.ExecuteScalar<long>(faults) is > 0 and var count)
            {
                yield return $"{count} {means}.";
            }
        }
    }
}
