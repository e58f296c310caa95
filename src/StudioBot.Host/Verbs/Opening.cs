using StudioBot.Craft.Practice;
using StudioBot.Host.Settings;
using StudioBot.Host.Turns;
using StudioBot.Records;

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

    /// <summary>Does this with the place of the studio's file; says what is wrong with the settings, where they name
    /// none.</summary>
    public static async Task<ExitCode> WithPlace(
        Invocation said, Workplace place, Func<string, Task<ExitCode>> work)
    {
        var found = CheckSettings.Of(place.Machine, said.Data);
        if (found.PlaceTroubles is not [_, ..] troubles)
        {
            return await work(found.Settings.StudioPath);
        }

        foreach (var line in SettingReport.Own(troubles))
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
        try
        {
            code = ExitCode.Done;
            return new InventedStudio(practice, path);
        }
        catch (Exception no) when (OpeningTrouble.Of(no, path ?? "") is { } trouble)
        {
            code = Told(place, trouble);
            return null;
        }
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
            try
            {
                return work(file);
            }
            catch (UnwritableStudioException no) when (OpeningTrouble.Of(no, path) is { } trouble)
            {
                return Told(place, trouble);
            }
        }
    }

    /// <summary>The studio in this file; where it can't be had, the reason is told and the code says it.</summary>
    public static StudioFile? Open(string path, Workplace place, out ExitCode code)
    {
        try
        {
            code = ExitCode.Done;
            RefuseMissing(path, place.Machine);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            return StudioFile.Open(path);
        }
        catch (Exception no) when (OpeningTrouble.Of(no, path) is { } trouble)
        {
            code = Told(place, trouble);
            return null;
        }
    }

    /// <summary>Says what stands in the way, in one line.</summary>
    public static ExitCode Told(Workplace place, OpeningTrouble trouble)
    {
        place.Streams.Error.WriteLine(trouble.Line);
        return trouble.Code;
    }

    /// <summary>Lets the folder of a studio pass that is there or may be made: one that was named is made only in a
    /// folder that is there, so that a disk that is not mounted is told and not filled in.</summary>
    /// <exception cref="DirectoryNotFoundException">It may not be made.</exception>
    public static void RefuseMissing(string path, Machine machine)
    {
        var folder = Path.GetDirectoryName(path)!;
        var isPersons = machine.PersonsData.Length > 0
            && folder.StartsWith(machine.PersonsData, StringComparison.Ordinal);
        if (!isPersons && Path.GetDirectoryName(folder) is { } above && !Directory.Exists(above))
        {
            throw new DirectoryNotFoundException($"There is no folder {above}.");
        }
    }
}
