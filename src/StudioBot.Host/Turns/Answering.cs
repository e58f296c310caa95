using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Host.Telegram;

namespace StudioBot.Host.Turns;

/// <summary>From a message of the chat service to its answer.</summary>
/// <param name="conversation">What reads and answers.</param>
/// <param name="invented">The studio it is answered from.</param>
/// <param name="botName">Our own user name there, without the @.</param>
internal sealed class Answering(Conversation conversation, InventedStudio invented, string botName)
{
    private static readonly Reply Anonymous = Line(
        "Written as the group or a channel, so nobody knows by whom.",
        "Turn off anonymous, or write to me in private.");

    private static readonly Reply Forwarded = Line(
        "Passed on from somebody else, so it is not taken as your word. Nothing recorded.",
        "Type it yourself to have it recorded.");

    private static readonly Reply NoWords = Line(
        "There are no words here that could be read.",
        "A photo can carry them as its caption.");

    /// <summary>The answer; none where the message is not meant for us.</summary>
    public Answered? To(ChatMessage message) => message.Words.Trim().Length == 0
        ? ToNoWords(message)
        : invented.Look(studio => Answer(message, TurnOf(message), studio));

    private Answered? Answer(ChatMessage message, Turn turn, Studio studio)
    {
        var heard = conversation.Hear(turn, studio);
        var asks = heard is Heard.Asked or Heard.Unread;
        if (heard is Heard.Silence)
        {
            return null;
        }

        return message switch
        {
            { IsAnonymous: true } => new Answered(Anonymous, ToQuestion: false),
            { IsForwarded: true } when !asks => new Answered(Forwarded, ToQuestion: false),
            _ => conversation.Answer(turn, studio) is { } reply ? new Answered(reply, asks) : null,
        };
    }

    private Turn TurnOf(ChatMessage message) => new(
        message.Words,
        message.Kind,
        new Speaker(message.Name, IsSteward: false),
        invented.Local(message.At))
    {
        BotName = botName,
        RepliesToBot = message.RepliesToBot,
    };

    private static Answered? ToNoWords(ChatMessage message) =>
        message.Kind == ChatKind.Private ? new Answered(NoWords, ToQuestion: false) : null;

    private static Reply Line(string first, string second) => new(new Block.Line(first), new Block.Line(second));
}
