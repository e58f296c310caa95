using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using StudioBot.Chat;
using StudioBot.Chat.Reading;
using StudioBot.Host.Settings;
using StudioBot.Host.Turns;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot read --now T --json</c>: how lines would be understood; nothing is done.</summary>
internal sealed class ReadVerb : Verb
{
    private const string Example = """{"text":"ratio 3:1 250 ml","chat":"private"}""";

    private static readonly string[] Moments =
        ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss"];

    /// <inheritdoc/>
    public override string Word => "read";

    /// <inheritdoc/>
    public override string Usage => "read [--now 2026-11-25T10:00] [--json]";

    /// <inheritdoc/>
    public override string Says => "JSON lines in, how each is understood out; nothing is done.";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Options => ["--now", "--json"];

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) =>
        Opening.Looking(place, async invented =>
        {
            if (Moment(said.Now, place, invented) is not { } local)
            {
                await place.Streams.Error.WriteLineAsync($"“{said.Now}” is no moment. Try  studiobot {Usage}");
                return ExitCode.CommandLine;
            }

            var conversation = new Conversation(Catalogue.Find());
            while (await place.Streams.In.ReadLineAsync(cancellation) is { } line)
            {
                if (string.IsNullOrWhiteSpace(line))
                {
                    continue;
                }

                var heard = invented.Look(studio =>
                    Understood(line, local, invented.Steward, conversation, studio, place.Streams.Error));
                await place.Streams.Out.WriteLineAsync(HeardJson.Line(heard));
                await place.Streams.Out.FlushAsync(cancellation);
            }

            return ExitCode.Done;
        }, CheckSettings.Of(place.Machine, said.Data).Settings.StudioPath);

    // A moment without an offset is the studio's wall clock; with one it is turned into that.
    private static DateTime? Moment(string? named, Workplace place, InventedStudio invented)
    {
        if (named is null)
        {
            return invented.Local(place.Time.GetUtcNow());
        }

        var culture = CultureInfo.InvariantCulture;
        if (DateTime.TryParseExact(named, Moments, culture, DateTimeStyles.None, out var local))
        {
            return local;
        }

        return DateTimeOffset.TryParse(named, culture, DateTimeStyles.None, out var moment)
            ? invented.Local(moment)
            : null;
    }

    // A line that breaks us is said to be so, and the next one is read.
    private static JsonObject Understood(
        string line, DateTime local, Speaker steward, Conversation conversation, Studio studio, TextWriter log)
    {
        try
        {
            return Understood(line, local, steward, conversation, studio);
        }
        catch (Exception broken)
        {
            log.WriteLine(broken);
            return Unread("that broke here, not at your end");
        }
    }

    private static JsonObject Understood(
        string line, DateTime local, Speaker steward, Conversation conversation, Studio studio)
    {
        if (Parsed(line) is not { } asked || Text(asked, "text") is not { } words)
        {
            return Unread("this line is no JSON object with a text");
        }

        var turn = new Turn(
            words,
            Text(asked, "chat") == "group" ? ChatKind.Group : ChatKind.Private,
            steward,
            local);
        var heard = HeardJson.Of(HeardLine.From(conversation.Hear(turn, studio)));
        if (asked["id"] is { } id)
        {
            heard.Insert(0, "id", id.DeepClone());
        }

        return heard;
    }

    private static JsonObject Unread(string why) => HeardJson.Of(new HeardLine(
        "error", "", new Dictionary<string, IReadOnlyList<Meaning>>(), new Misread("", why, Example)));

    private static string? Text(JsonObject asked, string name) =>
        asked[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;

    private static JsonObject? Parsed(string line)
    {
        try
        {
            return JsonNode.Parse(line) as JsonObject;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
