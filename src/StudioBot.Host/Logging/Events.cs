using Microsoft.Extensions.Logging;

namespace StudioBot.Host.Logging;

/// <summary>Everything that the service writes into its log, by numbers and names that stay: whoever looks for them is
/// not misled by other words. A number that is no longer used is not given to another.</summary>
internal static class Events
{
    /// <summary>The service has begun; as whom, where its studio lies.</summary>
    public static readonly EventId Serving = new(100, nameof(Serving));

    /// <summary>It is not ready, and why; studiobot health says the same.</summary>
    public static readonly EventId NotReady = new(101, nameof(NotReady));

    /// <summary>It is ready again.</summary>
    public static readonly EventId ReadyAgain = new(102, nameof(ReadyAgain));

    /// <summary>The studio answered nobody for a minute; it ends itself and is started anew.</summary>
    public static readonly EventId Hangs = new(103, nameof(Hangs));

    /// <summary>One of its loops broke and goes on after a while.</summary>
    public static readonly EventId LoopBroke = new(104, nameof(LoopBroke));

    /// <summary>The port at which it tells how it is belongs to another program.</summary>
    public static readonly EventId HealthPortTaken = new(105, nameof(HealthPortTaken));

    /// <summary>Who asked how it is did not wait.</summary>
    public static readonly EventId HealthAskerGone = new(106, nameof(HealthAskerGone));

    /// <summary>The chat service can't be reached at the start; tried again.</summary>
    public static readonly EventId ServiceUnreachable = new(200, nameof(ServiceUnreachable));

    /// <summary>The menu of commands could not be set.</summary>
    public static readonly EventId MenuNotSet = new(201, nameof(MenuNotSet));

    /// <summary>What came from the chat service is none of its messages.</summary>
    public static readonly EventId UpdatesWithoutNumber = new(202, nameof(UpdatesWithoutNumber));

    /// <summary>Another program uses the same token.</summary>
    public static readonly EventId SecondPoller = new(203, nameof(SecondPoller));

    /// <summary>The chat service does not answer; asked again.</summary>
    public static readonly EventId PollFailed = new(204, nameof(PollFailed));

    /// <summary>Messages could not be fetched or stored; tried again.</summary>
    public static readonly EventId PollBroke = new(205, nameof(PollBroke));

    /// <summary>A press of a button got no answer in time; what it did stands.</summary>
    public static readonly EventId PressNotAnswered = new(206, nameof(PressNotAnswered));

    /// <summary>Answering a message broke; nothing of it is recorded; the mark stands in the answer.</summary>
    public static readonly EventId AnswerBroke = new(300, nameof(AnswerBroke));

    /// <summary>The same message broke three times and is left.</summary>
    public static readonly EventId UpdateParked = new(301, nameof(UpdateParked));

    /// <summary>A group got another number and is followed.</summary>
    public static readonly EventId ChatMoved = new(302, nameof(ChatMoved));

    /// <summary>A message that is none for the bot.</summary>
    public static readonly EventId UpdateNotAnswered = new(303, nameof(UpdateNotAnswered));

    /// <summary>The studio can't be written; its authors are told, and the messages wait.</summary>
    public static readonly EventId StudioNotWritable = new(304, nameof(StudioNotWritable));

    /// <summary>It can be written again.</summary>
    public static readonly EventId StudioWritableAgain = new(305, nameof(StudioWritableAgain));

    /// <summary>A message was being sent when the service ended; it goes again and says so.</summary>
    public static readonly EventId PostOnTheWire = new(400, nameof(PostOnTheWire));

    /// <summary>A message that waits to be sent can't be read.</summary>
    public static readonly EventId PostUnreadable = new(401, nameof(PostUnreadable));

    /// <summary>Sending a message broke.</summary>
    public static readonly EventId PostBroke = new(402, nameof(PostBroke));

    /// <summary>A sent message can't be marked as sent.</summary>
    public static readonly EventId PostNotMarked = new(403, nameof(PostNotMarked));

    /// <summary>The wall can't be pinned; the group is told.</summary>
    public static readonly EventId NotPinned = new(404, nameof(NotPinned));

    /// <summary>The chat service refuses a message.</summary>
    public static readonly EventId PostRefused = new(405, nameof(PostRefused));

    /// <summary>A message could not be sent and goes again.</summary>
    public static readonly EventId PostAgain = new(406, nameof(PostAgain));

    /// <summary>A message is given up; its chat is told where that can be.</summary>
    public static readonly EventId PostParked = new(407, nameof(PostParked));

    /// <summary>A member blocked the bot, or a group is gone.</summary>
    public static readonly EventId ChatUnreachable = new(408, nameof(ChatUnreachable));

    /// <summary>A picture was not taken; its words went out.</summary>
    public static readonly EventId PictureNotTaken = new(409, nameof(PictureNotTaken));

    /// <summary>A message was not taken as it was and went out as plain text.</summary>
    public static readonly EventId SentAsPlain = new(410, nameof(SentAsPlain));

    /// <summary>The day's backup is made and proven.</summary>
    public static readonly EventId BackupProven = new(500, nameof(BackupProven));

    /// <summary>Another backup was being made at that moment.</summary>
    public static readonly EventId BackupUnderWay = new(501, nameof(BackupUnderWay));

    /// <summary>The day's backup could not be made; stewards are told.</summary>
    public static readonly EventId BackupNotMade = new(502, nameof(BackupNotMade));

    /// <summary>The studio's file is damaged; stewards are told.</summary>
    public static readonly EventId StudioDamaged = new(503, nameof(StudioDamaged));

    /// <summary>Backup:Command did not do its work; stewards are told.</summary>
    public static readonly EventId BackupNotCopied = new(504, nameof(BackupNotCopied));

    /// <summary>Making the day's backup broke.</summary>
    public static readonly EventId BackupBroke = new(505, nameof(BackupBroke));

    /// <summary>The backup that a steward asked for could not be made.</summary>
    public static readonly EventId AskedBackupNotMade = new(506, nameof(AskedBackupNotMade));

    /// <summary>The clock can't be right; reminders wait; stewards are told.</summary>
    public static readonly EventId ClockWrong = new(600, nameof(ClockWrong));

    /// <summary>It can be right again.</summary>
    public static readonly EventId ClockRight = new(601, nameof(ClockRight));

    /// <summary>One of the regular looks hangs; the others go on.</summary>
    public static readonly EventId TickDropped = new(602, nameof(TickDropped));

    /// <summary>One of the regular looks broke.</summary>
    public static readonly EventId TickBroke = new(603, nameof(TickBroke));

    /// <summary>What was settled long ago is forgotten.</summary>
    public static readonly EventId Forgotten = new(604, nameof(Forgotten));

    /// <summary>The clock of the machine was set.</summary>
    public static readonly EventId ClockSet = new(605, nameof(ClockSet));

    /// <summary>At the terminal: looking for what is due broke.</summary>
    public static readonly EventId TerminalDueBroke = new(700, nameof(TerminalDueBroke));

    /// <summary>At the terminal: answering broke; nothing of it is recorded.</summary>
    public static readonly EventId TerminalAnswerBroke = new(701, nameof(TerminalAnswerBroke));
}
