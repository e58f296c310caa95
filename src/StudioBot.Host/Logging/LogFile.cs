using StudioBot.Host.Settings;

namespace StudioBot.Host.Logging;

/// <summary>The terminal's log: in the data folder, never between question and answer.</summary>
internal static class LogFile
{
    /// <summary>Where it lies.</summary>
    public static string Of(StudioSettings settings) => Path.Combine(settings.DataFolder, "terminal.log");

    /// <summary>The log in the data folder; none where there is no such folder or it can't be written.</summary>
    public static LineLog? Beside(StudioSettings settings, TimeProvider time)
    {
        if (!Directory.Exists(settings.DataFolder))
        {
            return null;
        }

        try
        {
            return new LineLog(new StreamWriter(Of(settings), append: true), time);
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
