using System.Text.Json.Nodes;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Host.Settings;
using StudioBot.Host.Terminal;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot ask "WORDS"</c>: one answer, nothing booked.</summary>
internal sealed class AskVerb : Verb
{
    /// <inheritdoc/>
    public override string Word => "ask";

    /// <inheritdoc/>
    public override string Usage => "ask \"WORDS\" [--json]";

    /// <inheritdoc/>
    public override string Says => "One answer, nothing booked.";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Options => ["--json"];

    /// <inheritdoc/>
    public override (int Fewest, int Most) Takes => (1, int.MaxValue);

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var path = CheckSettings.Of(place.Machine, said.Data).Settings.StudioPath;
        return Opening.Looking(place, invented =>
        {
            var turn = new Turn(
                string.Join(' ', said.Words),
                ChatKind.Private,
                invented.Steward,
                invented.Local(place.Time.GetUtcNow()));
            return Task.FromResult(invented.Look(studio => Answer(
                turn, studio, said.Json,
                studio.IsSample ? new Exports(null) : Exports.Beside(path), place.Streams.Out)));
        }, path);
    }

    private static ExitCode Answer(Turn turn, Studio studio, bool json, Exports exports, TextWriter to)
    {
        var conversation = new Conversation(Catalogue.Find());
        var heard = conversation.Hear(turn, studio);
        var reply = conversation.Answer(turn, studio) ?? new Reply(new Block.Line("That is not meant for the bot."));
        to.WriteLine(json ? HeardJson.Line(AsJson(heard, reply)) : reply.PlainText);
        if (reply.File is { IsPicture: false } file && !json)
        {
            to.WriteLine(exports.Write(file));
        }

        return reply.IsTrouble ? ExitCode.NotAnswered : ExitCode.Done;
    }

    private static JsonObject AsJson(Heard heard, Reply reply)
    {
        var answer = HeardJson.Of(HeardLine.From(heard));
        answer["text"] = reply.PlainText;
        if (reply.File is { } file)
        {
            answer["file"] = file.Name;
        }

        answer["buttons"] = new JsonArray([.. reply.Buttons.Select(button =>
            new JsonObject { ["label"] = button.Label, ["line"] = button.Line })]);
        return answer;
    }
}
