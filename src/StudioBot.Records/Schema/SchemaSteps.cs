using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Schema;

/// <summary>The numbered scripts that make a studio's file, applied in order and one transaction each.</summary>
internal static class SchemaSteps
{
    private const string Folder = "StudioBot.Records.Schema.";

    // Ordered by their number; the first is 1 and none is missing.
    private static readonly IReadOnlyList<string> Scripts = [.. Embedded().Order(StringComparer.Ordinal)];

    /// <summary>The version a file has when every step was applied.</summary>
    public static int Newest => Scripts.Count;

    /// <summary>Lets files of this program and older ones pass.</summary>
    /// <exception cref="NewerStudioException">The file was written by a newer program.</exception>
    public static void RefuseNewer(SqliteConnection connection)
    {
        if (VersionOf(connection) is var version && version > Newest)
        {
            throw new NewerStudioException(version, Newest);
        }
    }

    /// <summary>Lets only files pass that have seen every step.</summary>
    /// <exception cref="NewerStudioException">The file was written by a newer program.</exception>
    /// <exception cref="OlderStudioException">It lacks steps.</exception>
    public static void RefuseOther(SqliteConnection connection)
    {
        RefuseNewer(connection);
        if (VersionOf(connection) is var version && version < Newest)
        {
            throw new OlderStudioException(version, Newest);
        }
    }

    /// <summary>Whether the file holds a studio that lacks steps; a file that is still empty holds none.</summary>
    public static bool AreMissing(SqliteConnection connection) =>
        VersionOf(connection) is var version && version > 0 && version < Newest;

    /// <summary>Applies what this file has not yet seen; a file that is up to date is left alone.</summary>
    public static void Apply(SqliteConnection connection) => Apply(connection, Newest);

    /// <summary>Applies what this file has not yet seen of the steps up to this version.</summary>
    public static void Apply(SqliteConnection connection, int version)
    {
        for (var step = VersionOf(connection); step < version; step++)
        {
            ApplyOne(connection, Scripts[step], step + 1);
        }
    }

    /// <summary>The file's version; 0 where no step was ever applied.</summary>
    public static int VersionOf(SqliteConnection connection) =>
        connection.ExecuteScalar<int>("pragma user_version");

    private static void ApplyOne(SqliteConnection connection, string script, int number)
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        Run(connection, Text(script));

        // A pragma takes no parameter; the number is our own.
        connection.Execute(string.Create(CultureInfo.InvariantCulture, $"pragma user_version = {number}"));
        transaction.Commit();
    }

    // To the last statement: what breaks in those that are left when a reader is closed is not told by the library, and
    // half a step would be committed.
    private static void Run(SqliteConnection connection, string statements)
    {
        using var reader = connection.ExecuteReader(statements);
        while (reader.NextResult())
        {
        }
    }

    private static IEnumerable<string> Embedded() =>
        typeof(SchemaSteps).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal));

    private static string Text(string script)
    {
        using var stream = typeof(SchemaSteps).Assembly.GetManifestResourceStream(script)
            ?? throw new InvalidOperationException($"The schema step {script} is not embedded.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
