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

    /// <summary>From now on it counts the rows that change, of each table.</summary>
    /// <remarks>A connection that only reads need not: to it nothing changes within a transaction.</remarks>
    public void CountChanges() => raw.sqlite3_update_hook(
        Handle,
        (_, _, _, table, _) =>
        {
            var name = table.utf8_to_string();
            changes[name] = changes.GetValueOrDefault(name) + 1;
        },
        null);

    /// <summary>How often a row of these tables changed.</summary>
    public long ChangesOf(string[] tables) => takenBack + tables.Sum(table => changes.GetValueOrDefault(table));

    /// <summary>Some changes were taken back: that counts as a change of every table.</summary>
    public void CountTakenBack() => takenBack++;

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

        public override SqliteDataReader ExecuteReader(CommandBehavior behavior) =>
            Watched(() => Real.ExecuteReader(behavior));

        public override int ExecuteNonQuery() => Watched(Real.ExecuteNonQuery);

        public override object? ExecuteScalar() => Watched(Real.ExecuteScalar);

        public override void Prepare() => Real.Prepare();

        protected override void Dispose(bool disposing)
        {
            if (disposing)
            {
                GiveBack();
            }

            base.Dispose(disposing);
        }

        private T Watched<T>(Func<T> work)
        {
            failed = true;
            var result = work();
            failed = false;
            return result;
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
