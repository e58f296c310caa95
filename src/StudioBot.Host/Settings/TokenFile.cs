namespace StudioBot.Host.Settings;

/// <summary>A file that holds the token and nothing else.</summary>
internal static class TokenFile
{
    /// <summary>What it holds; nothing, and why is noted, where it can't be read.</summary>
    public static string? Read(string path, List<SettingTrouble> troubles)
    {
        var (text, why) = Content(path);
        if (why is not null)
        {
            troubles.Add(new(SettingKeys.TokenFile, path, why, "/run/credentials/studiobot/token"));
        }

        return text;
    }

    private static (string? Text, string? Why) Content(string path)
    {
        try
        {
            var text = File.ReadAllText(path).Trim();
            return text.Length > 0 ? (text, null) : (null, "is empty");
        }
        catch (UnauthorizedAccessException)
        {
            return (null, "may not be read by this user");
        }
        catch (IOException)
        {
            return (null, "can't be read: is it there?");
        }
    }
}
