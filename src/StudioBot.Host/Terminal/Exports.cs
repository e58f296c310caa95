using System.Globalization;
using StudioBot.Chat.Replies;

namespace StudioBot.Host.Terminal;

/// <summary>Where files go that come with an answer in a terminal: a folder beside the studio's file.</summary>
/// <param name="Folder">The folder; none: nothing is kept, as of an invented studio.</param>
internal sealed record Exports(string? Folder)
{
    /// <summary>The folder of this studio.</summary>
    public static Exports Beside(string studioPath) =>
        new(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(studioPath))!, "exports"));

    /// <summary>Writes it under a name that is not taken, and says where it is.</summary>
    public string Write(ReplyFile file)
    {
        if (Folder is null)
        {
            return $"({(file.IsPicture ? file.Name : file.InWords)}; of an invented studio no file is written.)";
        }

        try
        {
            Directory.CreateDirectory(Folder);
            return file.IsPicture
                ? $"Picture in {Drawn(Safe(file.Name), file.Content)}"
                : $"Written to {Written(Safe(file.Name), file.Content)}";
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            return $"Can't write to {Folder}: {no.Message}";
        }
    }

    // One that shows how it was takes no room: a picture is drawn again whenever it is asked for.
    private string Drawn(string name, byte[] content)
    {
        var path = Path.Combine(Folder!, name);
        File.WriteAllBytes(path, content);
        return path;
    }

    // An earlier one stays.
    private string Written(string name, byte[] content)
    {
        var (stem, kind) = (Path.GetFileNameWithoutExtension(name), Path.GetExtension(name));
        for (var turn = 1; ; turn++)
        {
            var own = turn == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{stem}-{turn}{kind}");
            var path = Path.Combine(Folder!, own);
            if (!Path.Exists(path))
            {
                using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
                file.Write(content);
                return path;
            }
        }
    }

    private static string Safe(string name)
    {
        var own = string.Concat(name.Select(letter =>
            char.IsAsciiLetterOrDigit(letter) || letter is '.' or '-' ? letter : '-')).Trim('.', '-');
        return own.Length > 0 ? own : "file";
    }
}
