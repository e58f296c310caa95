using System.Text.Json;

namespace StudioBot.Host.Settings;

/// <summary>What the trade assumes, read from its five files and checked as a whole.</summary>
internal static class TradeSettings
{
    private static readonly JsonDocumentOptions Lenient = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
    };

    /// <summary>Reads the files of this folder: all of them, or everything that is wrong in them.</summary>
    /// <exception cref="IOException">The disk failed while a file was read.</exception>
    public static TradeReading Load(string folder)
    {
        var errors = new List<TradeSettingError>();
        var pours = Read(folder, "techniques.json", errors, TradeTechniques.Read);
        var materials = Read(folder, "materials.json", errors, TradeMaterials.Read);
        var resins = Read(folder, "resins.json", errors, TradeResins.Read);
        var safety = Read(folder, "safety.json", errors, TradeSafety.Read);
        var faults = Read(folder, "causes.json", errors, TradeCauses.Read);

        // A reader that has nothing to give has noted why.
        return errors.Count > 0
            ? new TradeReading.Wrong(errors)
            : new TradeReading.Read(new(pours!, materials!, resins.All, resins.Usual!, safety!, faults!));
    }

    private static T? Read<T>(string folder, string file, List<TradeSettingError> errors, Func<TradeNode, T> read)
    {
        var place = new TradePlace(file, errors);
        if (Text(Path.Combine(folder, file), place) is not { } text || Parsed(text, place) is not { } document)
        {
            return default;
        }

        using (document)
        {
            return TradeNode.Read(place, "", document.RootElement, read);
        }
    }

    private static string? Text(string path, TradePlace place)
    {
        if (!File.Exists(path))
        {
            place.Wrong("the file", "", "it is not in the settings folder", "the file that came with the program");
            return null;
        }

        try
        {
            return File.ReadAllText(path);
        }
        catch (UnauthorizedAccessException)
        {
            place.Wrong("the file", "", "it may not be read by this account", "read rights for the account");
            return null;
        }
    }

    private static JsonDocument? Parsed(string text, TradePlace place)
    {
        try
        {
            return JsonDocument.Parse(text, Lenient);
        }
        catch (JsonException broken)
        {
            var line = (int)(broken.LineNumber ?? 0);
            var written = text.Split('\n').ElementAtOrDefault(line) ?? "";
            const string example = "\"key\": value, with a comma between two";
            place.Wrong($"line {line + 1}", written, "this is not JSON from here on", example);
            return null;
        }
    }
}
