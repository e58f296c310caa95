using StudioBot.Craft.Practice;
using StudioBot.Host.Settings;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Schema;

namespace StudioBot.Host.Verbs;

/// <summary>Opens what a verb works on, and says in one line and by its exit code why it can't.</summary>
internal static class Opening
{
    /// <summary>Where the trade's values stand.</summary>
    public static string ConfigFolder(Workplace place) => Path.Combine(place.Machine.ProgramFolder, "config");

    /// <summary>Does this with the trade's values; says what is wrong with them, where something is.</summary>
    public static async Task<ExitCode> WithPractice(Workplace place, Func<TradePractice, Task<ExitCode>> work)
    {
        var trade = TradeSettings.Load(ConfigFolder(place));
        if (trade is TradeReading.Read { Practice: var practice })
        {
            return await work(practice);
        }

        foreach (var line in SettingReport.Lines([], trade))
        {
            await place.Streams.Error.WriteLineAsync(line);
        }

        return ExitCode.Settings;
    }

    /// <summary>Does this with the studio in a file, or the invented one where there is none.</summary>
    public static Task<ExitCode> Looking(
        Workplace place, Func<InventedStudio, Task<ExitCode>> work, string path) =>
        WithPractice(place, async practice =>
        {
            if (Looked(practice, place, path, out var code) is not { } invented)
            {
                return code;
            }

            using (invented)
            {
                return await work(invented);
            }
        });

    private static InventedStudio? Looked(TradePractice practice, Workplace place, string? path, out ExitCode code)
    {
        code = ExitCode.Damaged;
        try
        {
            return new InventedStudio(practice, path);
        }
        catch (NewerStudioException newer)
        {
            code = Told(place, ExitCode.Damaged, $"{path}: {newer.Message} Use the newer program.");
        }
        catch (OlderStudioException older)
        {
            code = Told(
                place, ExitCode.Damaged, $"{path}: {older.Message} Start the service once to bring it up to date.");
        }
        catch (UnreadableStudioException broken)
        {
            code = Told(place, ExitCode.Damaged, $"{path} is damaged or no studio: {broken.Message}");
        }

        return null;
    }

    /// <summary>Works with the studio in this file, which is made where there is none.</summary>
    public static ExitCode StudioIn(string path, Workplace place, Func<StudioFile, ExitCode> work)
    {
        if (Open(path, place, out var code) is not { } file)
        {
            return code;
        }

        using (file)
        {
            return work(file);
        }
    }

    /// <summary>The studio in this file; where it can't be had, the reason is told and the code says it.</summary>
    public static StudioFile? Open(string path, Workplace place, out ExitCode code)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            code = ExitCode.Done;
            return StudioFile.Open(path);
        }
        catch (StudioInUseException)
        {
            code = Told(
                place, ExitCode.InUse, $"Another studiobot has {path} open. Stop it first, or name another --data.");
        }
        catch (NewerStudioException newer)
        {
            code = Told(place, ExitCode.Damaged, $"{path}: {newer.Message} Use the newer program.");
        }
        catch (UnreadableStudioException broken) when (broken.IsDamaged)
        {
            code = Told(place, ExitCode.Damaged, $"{path} is damaged or no studio: {broken.Message}");
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException or UnreadableStudioException)
        {
            code = Told(
                place, ExitCode.CannotWrite, $"Can't write {path}: {no.Message} Name another folder with --data.");
        }

        return null;
    }

    private static ExitCode Told(Workplace place, ExitCode code, string line)
    {
        place.Streams.Error.WriteLine(line);
        return code;
    }
}
