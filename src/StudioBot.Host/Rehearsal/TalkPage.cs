using System.Globalization;
using System.Text.Json.Nodes;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Host.Verbs;
using StudioBot.Records.Post;

namespace StudioBot.Host.Rehearsal;

/// <summary>Where a rehearsal is written: for eyes, or one line of JSON a message of the bot.</summary>
/// <param name="to">Where.</param>
/// <param name="error">Where what was expected and did not come is written.</param>
/// <param name="asJson">Whether as JSON.</param>
/// <param name="files">The folder in which pictures and files are kept; none: they are only named.</param>
internal sealed class TalkPage(TextWriter to, TextWriter error, bool asJson, string? files)
{
    private const string Clock = "ddd yyyy-MM-dd HH:mm";
    private const string Indent = "    ";

    private StudioZone? wall;
    private int kept;

    /// <summary>Somebody or the clock did something.</summary>
    public void Event(DateTimeOffset now, TalkLine line, StudioZone zone)
    {
        wall = zone;
        if (!asJson && line is (TalkLine.Says or TalkLine.Presses or TalkLine.Stop or TalkLine.Start))
        {
            to.WriteLine();
            to.WriteLine($"{At(now)}  {line.Text}");
        }
    }

    /// <summary>What happens is told to who watches.</summary>
    public void Tell(TalkLine.Told told, bool opens)
    {
        if (!asJson)
        {
            if (opens)
            {
                to.WriteLine();
            }

            to.WriteLine("— " + told.Text);
        }
    }

    /// <summary>The bot sent something.</summary>
    public void Heard(HeardMessage message, StudioZone zone)
    {
        wall = zone;
        var place = message.File is { } one ? Kept(one) : null;
        var isPicture = message.File is { } enclosed && ReplyFile.IsOne(enclosed.MediaType);
        if (asJson)
        {
            to.WriteLine(HeardJson.Line(AsJson(message, isPicture ? place : null, isPicture ? null : place)));
            return;
        }

        if (message.IsPing)
        {
            to.WriteLine();
            to.WriteLine($"{At(message.At)}  (to {message.To}, by itself)");
        }

        var lead = message.IsPing ? Indent : $"{Indent}{message.To} ← ";
        foreach (var line in message.Text.ReplaceLineEndings("\n").Split('\n'))
        {
            to.WriteLine(lead + line);
            lead = Indent;
        }

        if (isPicture || (place is not null && files is not null))
        {
            to.WriteLine($"{Indent}({(isPicture ? "picture" : "file")}: {place})");
        }

        if (message.Buttons.Count > 0)
        {
            to.WriteLine($"{Indent}[{string.Join("] [", message.Buttons)}]");
        }
    }

    /// <summary>What was expected did not come.</summary>
    public void Failed(TalkLine line, string why, IReadOnlyList<HeardMessage> heard)
    {
        error.WriteLine($"line {line.Number}: {why}. The bot sent:");
        foreach (var message in heard)
        {
            error.WriteLine($"{Indent}{message.To}: {message.Text} [{string.Join("] [", message.Buttons)}]");
        }

        if (heard.Count == 0)
        {
            error.WriteLine(Indent + "nothing");
        }
    }

    /// <summary>All is played: says where its files are.</summary>
    public void End()
    {
        if (!asJson && kept > 0)
        {
            to.WriteLine();
            to.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{kept} pictures and files are in {Path.GetFullPath(files!)}"));
        }
    }

    private JsonObject AsJson(HeardMessage message, string? picture, string? file) => new()
    {
        ["at"] = wall!.LocalOf(message.At).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture),
        ["to"] = message.To,
        ["kind"] = message.IsPing ? "ping" : "reply",
        ["text"] = message.Text,
        ["buttons"] = new JsonArray([.. message.Buttons.Select(label => (JsonNode)label)]),
        ["picture"] = picture,
        ["file"] = file,
    };

    // In the order they came.
    private string Kept(PostFile file)
    {
        if (files is null)
        {
            return file.Name;
        }

        Directory.CreateDirectory(files);
        var path = Path.Combine(files, string.Create(CultureInfo.InvariantCulture, $"{++kept:000}-{file.Name}"));
        File.WriteAllBytes(path, file.Content);
        return path;
    }

    private string At(DateTimeOffset now) => wall is null
        ? now.ToString(Clock, CultureInfo.InvariantCulture)
        : wall.LocalOf(now).ToString(Clock, CultureInfo.InvariantCulture);
}
