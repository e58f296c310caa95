using StudioBot.Chat;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Units;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.Members;

namespace StudioBot.Host.Turns;

/// <summary>From a message to what comes of it, in the session that settles it.</summary>
/// <param name="conversation">What reads, answers and records.</param>
/// <param name="practice">What the trade assumes.</param>
/// <param name="isSample">Whether it is the invented studio.</param>
/// <param name="botName">Our own user name, without the @; empty where no chat service knows us.</param>
internal sealed class Answering(Conversation conversation, TradePractice practice, bool isSample, string botName)
{
    private static readonly Reply Forwarded = Line(
        "Passed on from somebody else, so it is not taken as your word. Nothing recorded.",
        "Type it yourself to have it recorded.");

    private static readonly Reply NotOfAButton = new(
        new Block.Line("This button is too old. Send the message again."));

    private static readonly Reply NoWords = Line(
        "There are no words here that could be read.",
        "A photo can carry them as its caption.");

    // The studio's words, good until something is recorded.
    private Vocabulary? words;

    /// <summary>What comes of a message; none where it is not meant for us.</summary>
    public Outcome? To(ChatMessage message, StudioSession session)
    {
        var studio = Studio(session);
        var turn = TurnOf(message, studio.Zone, session);
        if (message.Words.Trim().Length == 0)
        {
            return message.Kind == ChatKind.Group ? null
                : conversation.Bars(turn, studio, session) ?? new Outcome(NoWords, OnlyAsked: false);
        }

        StudioGroup.Learn(turn, session);
        if (message is { IsForwarded: false, IsCarried: false }
            || conversation.Hear(turn, studio) is not (Heard.Told or Heard.Doubtful))
        {
            return Taken(conversation.Take(turn, studio, session));
        }

        return conversation.Bars(turn, studio, session) ?? (message.IsForwarded
            ? Conversation.Refuse(Forwarded, "somebody else's word", turn, session)
            : Conversation.Refuse(NotOfAButton, "no such button", turn, session));
    }

    /// <summary>Whether a message is meant for us.</summary>
    public bool IsMeant(ChatMessage message, StudioSession session)
    {
        var studio = Studio(session);
        return message.Words.Trim().Length > 0
            && conversation.Hear(TurnOf(message, studio.Zone, session), studio) is not Heard.Silence;
    }

    /// <summary>What stands in the book of refusals of this message.</summary>
    /// <param name="why">Why it is not done, in a few words.</param>
    /// <param name="message">The message.</param>
    /// <param name="session">The session that settles it.</param>
    public Barred Noted(string why, ChatMessage message, StudioSession session)
    {
        var studio = Studio(session);
        return Conversation.Refuse(NotOfAButton, why, TurnOf(message, studio.Zone, session), session).Barred!;
    }

    /// <summary>What comes of a message that was corrected: a question is answered anew, and nothing is recorded.
    /// </summary>
    /// <param name="message">The message as it reads now.</param>
    /// <param name="answer">Which message answered it first; none while that has not arrived.</param>
    /// <param name="session">The session that settles it.</param>
    public Outcome? ToCorrected(ChatMessage message, long? answer, StudioSession session)
    {
        if (message.Words.Trim().Length == 0)
        {
            return null;
        }

        var studio = Studio(session);
        return conversation.TakeCorrected(TurnOf(message, studio.Zone, session), answer, studio, session);
    }

    /// <summary>The studio over this session, with its words.</summary>
    public Studio Studio(StudioSession session)
    {
        var studio = new Studio(session, practice, isSample, words);
        words = studio.Words;
        return studio;
    }

    /// <summary>The studio's words may have changed.</summary>
    public void Forget() => words = null;

    private Outcome? Taken(Outcome? outcome)
    {
        if (outcome is { MayName: true })
        {
            Forget();
        }

        return outcome;
    }

    private Turn TurnOf(ChatMessage message, StudioZone zone, StudioSession session)
    {
        var member = message.Mask is null ? session.Members.ByAccount(message.UserId) : null;
        return new Turn(message.Words, message.Kind, SpeakerOf(message, member, session), zone.LocalOf(message.At))
        {
            BotName = botName,
            Link = botName.Length > 0 ? words => $"https://t.me/{botName}?start={words}" : null,
            RepliesToBot = message.RepliesToBot,
            Zone = zone,
            Now = message.At,
            Member = member,
            UserId = message.UserId,
            ChatId = message.Chat,
            MessageId = message.MovedFrom is null ? message.Id : null,
            Mask = message.Mask,
            Photo = message.Photo,
            IsAgreed = message.IsAgreed,
            NewCode = Codes.New,
        };
    }

    private static Speaker SpeakerOf(ChatMessage message, Member? member, StudioSession session) => new(
        member?.Name ?? message.Name,
        member?.Role == Role.Steward,
        member?.Units ?? session.Studio.Settings()?.Units ?? UnitSystem.Metric);

    private static Reply Line(string first, string second) => new(new Block.Line(first), new Block.Line(second));
}
