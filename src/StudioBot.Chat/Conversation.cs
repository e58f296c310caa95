using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat;

/// <summary>From a message to its answer.</summary>
public sealed class Conversation(Catalogue catalogue)
{
    private const int MostNotes = 3;

    private readonly Listener _listener = new(catalogue);

    /// <summary>How the message is understood; nothing is done.</summary>
    public Heard Hear(Turn turn, Studio studio) => _listener.Hear(turn, studio.Words);

    /// <summary>The answer; none where the message is not meant for the bot.</summary>
    public Reply? Answer(Turn turn, Studio studio) => Hear(turn, studio) switch
    {
        Heard.Silence => null,
        Heard.Asked { Said: { Form: Ask ask } said } => Noted(ask.Answer(said, turn, studio), said),
        Heard.Asked asked => HowRead.Of([asked.Said]),
        Heard.Told told => HowRead.Of([told.Said]),
        Heard.Doubtful doubtful => HowRead.Doubt(doubtful, turn),
        Heard.Unread unread => HowRead.Trouble(unread, turn, catalogue),
        _ => throw new InvalidOperationException("Every way of hearing a message has its answer."),
    };

    // What was corrected or assumed is said once, at the end, where there is room for it.
    private static Reply Noted(Reply reply, Phrase said)
    {
        if (said.Notes.Count == 0)
        {
            return reply;
        }

        var notes = string.Join("; ", said.Notes.Distinct().Take(MostNotes));
        return reply with { Blocks = [.. reply.Blocks, new Block.Line(notes + ".")] };
    }
}
