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

    private const char ParameterMark = '$';

    private readonly Dictionary<string, SqliteCommand> kept = [];
    private readonly Dictionary<string, string> marked = [];
    private readonly Stack<Command> idle = [];
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
    public override SqliteCommand CreateCommand() =>
        idle.TryPop(out var command) ? command.Anew() : new Command(this);

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

    // The mapper leaves out the mark that stands before a parameter's name in the statement; without it the database
    // is asked for the name with each mark there could be.
    private string Marked(string name)
    {
        if (name.StartsWith(ParameterMark))
        {
            return name;
        }

        if (!marked.TryGetValue(name, out var full))
        {
            marked[name] = full = ParameterMark + name;
        }

        return full;
    }

    // What the mapper asks for, fills and throws away, which comes back; the one that does the work stays.
    private sealed class Command(StudioConnection own) : SqliteCommand("", own, own.Transaction)
    {
        private SqliteCommand? real;
        private bool failed;
        private bool isIdle;

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
            Begin();
            var reader = Real.ExecuteReader(behavior);
            failed = false;
            return reader;
        }

        public override int ExecuteNonQuery()
        {
            Begin();
            var rows = Real.ExecuteNonQuery();
            failed = false;
            return rows;
        }

        public override object? ExecuteScalar()
        {
            Begin();
            var value = Real.ExecuteScalar();
            failed = false;
            return value;
        }

        public override void Prepare() => Real.Prepare();

        public Command Anew()
        {
            (isIdle, failed) = (false, false);
            return this;
        }

        protected override void Dispose(bool disposing)
        {
            if (disposing && own.State == ConnectionState.Open)
            {
                GiveBack();
                if (!isIdle)
                {
                    isIdle = true;
                    own.idle.Push(this);
                }
            }
            else
            {
                base.Dispose(disposing);
            }
        }

        private void Begin()
        {
            failed = true;
            var parameters = Real.Parameters;
            for (var at = 0; at < parameters.Count; at++)
            {
                parameters[at].ParameterName = own.Marked(parameters[at].ParameterName);
            }
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
