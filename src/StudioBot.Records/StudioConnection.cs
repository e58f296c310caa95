using System.Data;
using System.Diagnostics.CodeAnalysis;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace StudioBot.Records;

/// <summary>A connection that keeps what the database worked out of a statement for the next time the same words come:
/// to work it out takes longer than most statements themselves.</summary>
internal sealed class StudioConnection(string source) : SqliteConnection(source)
{
    // A member's usual day needs some eighty; each takes some kilobytes.
    private const int MostKept = 160;

    private readonly Dictionary<string, SqliteCommand> kept = [];
    private readonly Dictionary<string, long> changes = [];
    private long takenBack;
    private long seenVersion;

    /// <summary>From now on it counts the rows that change, of each table.</summary>
    /// <remarks>A connection that only reads need not: to it nothing changes within a transaction. The database does
    /// not tell of tables without row numbers: who writes to one that is remembered says so itself.</remarks>
    public void CountChanges() => raw.sqlite3_update_hook(
        Handle,
        (_, _, _, table, _) =>
        {
            CountChange(table.utf8_to_string());
        },
        null);

    /// <summary>A row of this table changed.</summary>
    public void CountChange(string table) => changes[table] = changes.GetValueOrDefault(table) + 1;

    /// <summary>How often a row of these tables changed.</summary>
    public long ChangesOf(string[] tables)
    {
        var sum = takenBack;
        foreach (var table in tables)
        {
            sum += changes.GetValueOrDefault(table);
        }

        return sum;
    }

    /// <summary>How often changes were taken back, of whatever table.</summary>
    public long TakenBack => takenBack;

    /// <summary>Some changes were taken back: that counts as a change of every table.</summary>
    public void CountTakenBack() => takenBack++;

    /// <summary>What somebody else wrote into the file counts likewise.</summary>
    public void CountOthers()
    {
        using var command = CreateCommand();
        command.CommandText = "pragma data_version";
        var version = (long)command.ExecuteScalar()!;
        if (version != seenVersion)
        {
            seenVersion = version;
            CountTakenBack();
        }
    }

    /// <inheritdoc/>
    public override SqliteCommand CreateCommand() => new Command(this);

    private SqliteCommand Take(string words)
    {
        if (!kept.Remove(words, out var command))
        {
            command = base.CreateCommand();
            command.CommandText = words;
        }

        command.Transaction = Transaction;
        return command;
    }

    private void Keep(SqliteCommand command)
    {
        command.Parameters.Clear();
        if (kept.Count >= MostKept || !kept.TryAdd(command.CommandText, command))
        {
            command.Dispose();
        }
    }

    // What the mapper makes, fills and throws away; the one that does the work stays.
    private sealed class Command(StudioConnection own) : SqliteCommand("", own, own.Transaction)
    {
        private SqliteCommand? real;
        private bool failed;

        [AllowNull]
        public override string CommandText
        {
            get => real?.CommandText ?? "";
            set
            {
                GiveBack();
                real = own.Take(value ?? "");
            }
        }

        public override SqliteParameterCollection Parameters => Real.Parameters;

        private SqliteCommand Real => real ??= own.Take("");

        public override SqliteDataReader ExecuteReader(CommandBehavior behavior)
        {
            failed = true;
            var reader = Real.ExecuteReader(behavior);
            failed = false;
            return reader;
        }

        public override int ExecuteNonQuery()
        {
            failed = true;
            var rows = Real.ExecuteNonQuery();
            failed = false;
            return rows;
        }

        public override object? ExecuteScalar()
        {
            failed = true;
            var value = Real.ExecuteScalar();
            failed = false;
            return value;
        }

        public override void Prepare() => Real.Prepare();

        protected override void Dispose(bool disposing)
        {
            if (disposing)
            {
                GiveBack();
            }

            base.Dispose(disposing);
        }

        // One that failed may stand in the middle of its work.
        private void GiveBack()
        {
            if (real is { } done)
            {
                real = null;
                if (failed)
                {
                    done.Dispose();
                }
                else
                {
                    own.Keep(done);
                }
            }
        }
    }
}
