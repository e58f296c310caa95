using System.Security.Cryptography;
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
/// <param name="botName">Our own user name, without the @.</param>
internal sealed class Answering(Conversation conversation, TradePractice practice, bool isSample, string botName)
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

    // Nothing that looks like a figure or another letter.
    private const string CodeLetters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    // The studio's words, good until something is recorded.
    private Vocabulary? words;

    /// <summary>What comes of a message; none where it is not meant for us.</summary>
    public Outcome? To(ChatMessage message, StudioSession session)
    {
        if (message.Words.Trim().Length == 0)
        {
            return message.Kind == ChatKind.Private ? new Outcome(NoWords, OnlyAsked: false) : null;
        }

        var studio = Studio(session);
        var turn = TurnOf(message, studio.Zone, session);
        StudioGroup.Learn(turn, session);
        if (message is { IsForwarded: false, IsAnonymous: false })
        {
            return Taken(conversation.Take(turn, studio, session));
        }

        return conversation.Hear(turn, studio) switch
        {
            Heard.Silence => null,
            _ when message.IsAnonymous => new Outcome(Anonymous, OnlyAsked: false),
            Heard.Asked or Heard.Unread => Taken(conversation.Take(turn, studio, session)),
            _ => new Outcome(Forwarded, OnlyAsked: false),
        };
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
        if (outcome is { Recorded: true })
        {
            Forget();
        }

        return outcome;
    }

    private Turn TurnOf(ChatMessage message, StudioZone zone, StudioSession session)
    {
        var member = session.Members.ByAccount(message.UserId);
        return new Turn(message.Words, message.Kind, SpeakerOf(message, member, session), zone.LocalOf(message.At))
        {
            BotName = botName,
            RepliesToBot = message.RepliesToBot,
            Zone = zone,
            Now = message.At,
            Member = member,
            UserId = message.UserId,
            ChatId = message.Chat,
            MessageId = message.Id,
            Photo = message.Photo,
            IsAgreed = message.IsAgreed,
            NewCode = length => RandomNumberGenerator.GetString(CodeLetters, length),
        };
    }

    private static Speaker SpeakerOf(ChatMessage message, Member? member, StudioSession session) => new(
        member?.Name ?? message.Name,
        member?.Role == Role.Steward,
        member?.Units ?? session.Studio.Settings()?.Units ?? UnitSystem.Metric);

    private static Reply Line(string first, string second) => new(new Block.Line(first), new Block.Line(second));
}
