using Microsoft.Data.Sqlite;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.House;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;

namespace StudioBot.Endurance.Tests;

/// <summary>
/// The books of an invented studio of twenty after ten years: what was used and poured, charged, bought and coated.
/// Written straight into the file, as a program of ten years' standing would have left it.
/// </summary>
internal sealed class TenYears
{
    private const int Members = 20;
    private const int Paints = 24;
    private const int UsesADay = 204;
    private const int PartsOfAPour = 4;
    private const double DaysAPour = 0.18;
    private const long BottleMicrolitres = 5_000_000;
    private const long BottleCents = 9_000;

    private readonly int days;
    private readonly Random random;
    private readonly SqliteConnection books;
    private readonly (long Id, long Left)[] bottles = new (long, long)[Paints + 1];
    private readonly SqliteCommand act;
    private readonly SqliteCommand lot;
    private readonly SqliteCommand entry;
    private readonly SqliteCommand money;
    private readonly SqliteCommand piece;
    private readonly SqliteCommand happened;
    private readonly SqliteCommand coat;
    private long firstPaint;
    private long acts;
    private long lots;
    private int pieces;

    private TenYears(SqliteConnection books, int seed, int days)
    {
        (this.books, random, this.days) = (books, new Random(seed), days);
        act = Prepared("""
            insert into act (kind, author_id, chat_id, words, happened_at, written_at)
            values ($kind, $author, $author, $words, $at, $at)
            """);
        lot = Prepared("""
            insert into lot (material_id, label, bought_at, price_cents, bought_microlitres, act_id)
            values ($material, $label, $at, $price, $bought, $act)
            """);
        entry = Prepared("""
            insert into stock_entry (act_id, material_id, lot_id, microlitres, cents, reason)
            values ($act, $material, $lot, $amount, $cents, $reason)
            """);
        money = Prepared("""
            insert into money_entry (act_id, account, member_id, cents)
            values ($act, 'member', $member, $cents), ($act, 'studio', null, -$cents)
            """);
        piece = Prepared("""
            insert into piece (number, shape, width_micrometres, height_micrometres, technique, colours, maker_id,
                               poured_at, act_id)
            values ($number, 'panel', 400000, 300000, 'bloom', 4, $maker, $at, $act)
            """);
        happened = Prepared("""
            insert into piece_event (act_id, piece_id, kind, stage, cents)
            values ($act, $piece, $kind, $stage, $cents)
            """);
        coat = Prepared("""
            insert into coat (event_id, a_microlitres, b_microlitres, ratio_a, ratio_b, ratio_by, film_micrometres)
            values (last_insert_rowid(), 60000, 60000, 1, 1, 'volume', 1000)
            """);
    }

    /// <summary>The morning on which they end.</summary>
    public static DateTimeOffset Today { get; } = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    /// <summary>Writes them into this file.</summary>
    /// <param name="path">Where no file is yet.</param>
    /// <param name="seed">The same seed writes the same books.</param>
    /// <param name="days">So many days of them, the last ones.</param>
    /// <returns>How many lines the stock's book has.</returns>
    public static long WriteInto(string path, int seed, int days = 3653)
    {
        var first = Founded(path, days);
        using var books = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        books.Open();
        HasteAtAnyRisk(books);
        using var transaction = books.BeginTransaction();
        var years = new TenYears(books, seed, days) { firstPaint = first };
        years.Live();
        transaction.Commit();
        using var count = books.CreateCommand();
        count.CommandText = "select count(*) from stock_entry";
        return (long)count.ExecuteScalar()!;
    }

    // Nobody else looks at the file yet, and if the machine fails, it is written anew.
    private static void HasteAtAnyRisk(SqliteConnection books)
    {
        using var haste = books.CreateCommand();
        haste.CommandText = "pragma journal_mode = memory; pragma synchronous = off; pragma cache_size = -400000";
        haste.ExecuteNonQuery();
    }

    private static long Founded(string path, int days)
    {
        using var file = StudioFile.Open(path);
        return file.Write(session =>
        {
            var begin = Today.AddDays(-days);
            NewStudio.WriteInto(session, Sample.Practice, "Europe/Vienna", begin);
            for (var member = 1; member <= Members; member++)
            {
                session.Members.Add($"Member {member:00}", member == 1 ? Role.Steward : Role.Member, begin);
            }

            long[] paints = [.. Enumerable.Range(1, Paints).Select(paint => session.Materials.Add(
                new NewMaterial($"paint {paint:00}", MaterialForm.Liquid)
                {
                    Low = new Amount.ByVolume(Volume.FromMillilitres(1000)),
                    Packs = [new Pack(new Amount.ByVolume(Volume.FromMillilitres(5000)), new Money(BottleCents))],
                }).Id)];
            return paints[0];
        });
    }

    private void Live()
    {
        acts = Scalar("select coalesce(max(id), 0) from act");
        lots = Scalar("select coalesce(max(id), 0) from lot");
        var poured = 0.0;
        for (var day = days; day > 0; day--)
        {
            var morning = Today.AddDays(-day);
            for (var use = 0; use < UsesADay; use++)
            {
                var at = morning.AddSeconds(use * 36000.0 / UsesADay);
                if ((poured += 1.0 / UsesADay) >= DaysAPour)
                {
                    poured -= DaysAPour;
                    Pour(at);
                }
                else
                {
                    var (member, paint) = (random.Next(1, Members + 1), random.Next(1, Paints + 1));
                    Draw(paint, 1000L * random.Next(5, 60), "used", Acted("used", member, at), at, member);
                }
            }
        }
    }

    // Poured, dry after three weeks, coated, cured a week later; every fifth is sold. What is to come is not booked.
    private void Pour(DateTimeOffset at)
    {
        var maker = random.Next(1, Members + 1);
        var number = ++pieces;
        var first = random.Next(1, Paints + 1);
        var pour = Acted("pour", maker, at);
        for (var part = 0; part < PartsOfAPour; part++)
        {
            var paint = (first + part) % Paints + 1;
            pour = Draw(paint, 1000L * random.Next(20, 120), "poured", pour, at, maker);
        }

        Run(piece, number, maker, Milliseconds(at), pour);
        var id = Scalar("select last_insert_rowid()");
        Run(happened, pour, id, "poured", "drying", DBNull.Value);
        var laterDays = new (string Kind, string Event, string Stage, int Day)[]
        {
            ("dry", "dry", "ready", 21), ("coat", "coated", "coated", 22), ("cured", "cured", "cured", 29), ("sold", "sold", "sold", 60),
        };
        foreach (var (kind, what, stage, day) in laterDays.Take(number % 5 == 0 ? 4 : 3))
        {
            if (at.AddDays(day) < Today)
            {
                Run(happened, Acted(kind, maker, at.AddDays(day)), id, what, stage, what == "sold" ? 12000 : DBNull.Value);
                if (what == "coated")
                {
                    coat.ExecuteNonQuery();
                }
            }
        }
    }

    private long Draw(int paint, long amount, string reason, long act, DateTimeOffset at, int member)
    {
        if (bottles[paint].Left < amount)
        {
            Buy(paint, at);
            act = Acted(reason, member, at);
        }

        bottles[paint].Left -= amount;
        var cents = amount * BottleCents / BottleMicrolitres;
        Run(entry, act, firstPaint + paint - 1, bottles[paint].Id, -amount, -cents, reason);
        Run(money, act, member, -cents);
        return act;
    }

    private void Buy(int paint, DateTimeOffset at)
    {
        var member = random.Next(1, Members + 1);
        var bought = Acted("bought", member, at);
        Run(lot, firstPaint + paint - 1, $"P{paint}-{++lots}", Milliseconds(at), BottleCents, BottleMicrolitres, bought);
        bottles[paint] = (Scalar("select last_insert_rowid()"), BottleMicrolitres);
        Run(entry, bought, firstPaint + paint - 1, bottles[paint].Id, BottleMicrolitres, BottleCents, "bought");
        Run(money, bought, member, BottleCents);
    }

    private long Acted(string kind, int member, DateTimeOffset at)
    {
        Run(act, kind, member, $"{kind} something of it", Milliseconds(at));
        return ++acts;
    }

    private static long Milliseconds(DateTimeOffset at) => at.ToUnixTimeMilliseconds();

    private SqliteCommand Prepared(string text)
    {
        var command = books.CreateCommand();
        command.CommandText = text;
        foreach (var name in System.Text.RegularExpressions.Regex.Matches(text, @"\$\w+").Select(match => match.Value).Distinct())
        {
            command.Parameters.Add(new SqliteParameter(name, DBNull.Value));
        }

        return command;
    }

    private static void Run(SqliteCommand command, params object[] values)
    {
        for (var at = 0; at < values.Length; at++)
        {
            command.Parameters[at].Value = values[at];
        }

        command.ExecuteNonQuery();
    }

    private long Scalar(string text)
    {
        using var command = books.CreateCommand();
        command.CommandText = text;
        return (long)command.ExecuteScalar()!;
    }
}
