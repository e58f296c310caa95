using StudioBot.Chat.Importing;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Reminders;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot import FILE</c>: opens the shelf with what a table says, all of it or nothing.</summary>
internal sealed class ImportVerb : Verb
{
    private const int MostTroubles = 10;
    private const int MostNamed = 5;

    /// <inheritdoc/>
    public override string Word => "import";

    /// <inheritdoc/>
    public override string Usage => "import FILE [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "Puts the lots of a table on the shelf.";

    /// <inheritdoc/>
    public override (int Fewest, int Most) Takes => (1, 1);

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var table = said.Words[0];
        if (Read(table) is not { } content)
        {
            var why = Directory.Exists(table) ? $"{table} is a folder, not a table."
                : File.Exists(table) ? $"{table} can't be read."
                : $"There is no file {table}.";
            place.Streams.Error.WriteLine($"{why} Name a table:  studiobot import stock.csv");
            return Task.FromResult(ExitCode.CommandLine);
        }

        return Opening.WithPlace(said, place, path => Opening.WithPractice(place, practice => Task.FromResult(
            Opening.StudioIn(path, place, file =>
                Told(Taken(file, content, Path.GetFileName(table), practice, place), path, place)))));
    }

    // None where there is no such file, or it may not be read.
    private static byte[]? Read(string table)
    {
        try
        {
            return File.ReadAllBytes(table);
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static Imported Taken(
        StudioFile file, byte[] content, string name, TradePractice practice, Workplace place)
    {
        var now = place.Time.GetUtcNow();
        Founding.Found(file, practice, now);
        Founding.SeatTerminal(file, now);
        return file.Write(session =>
        {
            var zone = new StudioZone(TimeZoneInfo.FindSystemTimeZoneById(session.Studio.Settings()!.Zone));
            var steward = session.Members.ByAccount(MemberRecords.Terminal);
            return StockImport.Into(
                session, content, zone, new NewAct(StockImport.Kind, steward, $"{StockImport.Kind} {name}", now));
        });
    }

    private static ExitCode Told(Imported imported, string path, Workplace place)
    {
        if (imported is Imported.Done done)
        {
            var (lots, named) = (done.Lots == 1 ? "1 lot" : $"{done.Lots} lots", done.Named.Take(MostNamed));
            place.Streams.Out.WriteLine($"{lots}, worth {done.Worth}, on the shelf of {path}.");
            if (done.Named.Count > 0)
            {
                place.Streams.Out.WriteLine(
                    $"New materials: {string.Join(", ", named)}{(done.Named.Count > MostNamed ? " …" : "")}.");
            }

            place.Streams.Out.WriteLine("Nobody is credited. Take it back with “undo” in the chat.");
            return ExitCode.Done;
        }

        var troubles = ((Imported.Refused)imported).Troubles;
        foreach (var trouble in troubles.Take(MostTroubles))
        {
            place.Streams.Error.WriteLine(trouble);
        }

        var more = troubles.Count - MostTroubles;
        place.Streams.Error.WriteLine(more > 0 ? $"And {more} more. Nothing was taken." : "Nothing was taken.");
        return ExitCode.CheckFailed;
    }
}
