using StudioBot.Chat.Pings;
using StudioBot.Craft.Reminders;
using StudioBot.Host.Settings;
using StudioBot.Records;
using StudioBot.Records.House;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;

namespace StudioBot.Chat.Tests.Support;

/// <summary>A studio in memory that is written to: every line is said by a member, in private unless told otherwise.</summary>
internal sealed class LiveStudio : IDisposable
{
    private static readonly Conversation Conversation = new(Catalogue.Find());

    /// <summary>What the trade assumes.</summary>
    public static readonly Craft.Practice.TradePractice Practice =
        TradeSettings.Load(Path.Combine(AppContext.BaseDirectory, "config")) is TradeReading.Read read
            ? read.Practice
            : throw new InvalidOperationException("The shipped trade values do not load.");

    private LiveStudio(StudioFile file) => File = file;

    // Codes are drawn in the order of the alphabet: AAAA, BBBB.
    private int drawn;

    /// <summary>The file, to look into.</summary>
    public StudioFile File { get; }

    /// <summary>When the next line is said; moved by the test.</summary>
    public DateTimeOffset Now { get; set; } = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    /// <summary>The invented studio.</summary>
    public static LiveStudio Sample()
    {
        var file = StudioFile.OpenInMemory();
        file.Write(SampleStudio.WriteInto);
        return new LiveStudio(file);
    }

    /// <summary>A studio as it begins, with a steward Mira and a member Pia.</summary>
    public static LiveStudio Empty()
    {
        var studio = new LiveStudio(StudioFile.OpenInMemory());
        studio.File.Write(session =>
        {
            NewStudio.WriteInto(session, Practice, "Europe/Vienna", studio.Now);
            session.Members.Add("Mira", Role.Steward, studio.Now);
            session.Members.Add("Pia", Role.Member, studio.Now);
        });
        return studio;
    }

    /// <summary>What comes of a line.</summary>
    /// <param name="words">The line.</param>
    /// <param name="by">Who says it.</param>
    /// <param name="agreed">Whether by a button that agrees.</param>
    /// <param name="chat">Where.</param>
    /// <param name="photo">A photo's name, where one comes with it.</param>
    public Outcome Say(
        string words,
        string by = "Mira",
        bool agreed = false,
        ChatKind chat = ChatKind.Private,
        string? photo = null) => File.Write(session =>
    {
        var member = session.Members.All().First(one => one.Name == by);
        return Taken(TurnOf(words, by, member, member.Id, chat, session) with { IsAgreed = agreed, Photo = photo }, session);
    });

    /// <summary>What comes of a line that somebody writes in private, known by their account alone.</summary>
    /// <param name="account">Their account.</param>
    /// <param name="name">As the chat service calls them.</param>
    /// <param name="words">The line.</param>
    public Outcome SayFrom(long account, string name, string words) => File.Write(session => Taken(
        TurnOf(words, name, session.Members.ByAccount(account), account, ChatKind.Private, session), session));

    /// <summary>What the bot says by itself at this moment.</summary>
    public IReadOnlyList<SpokenPing> Ring() => File.Write(session =>
        PingRound.Of(session, new Studio(session, Practice, isSample: false), Now));

    /// <summary>The words of what comes of a line.</summary>
    public string Hear(string words, string by = "Mira", bool agreed = false) =>
        Say(words, by, agreed).Reply.PlainText.ReplaceLineEndings("\n");

    /// <summary>Looks into the records.</summary>
    public T Look<T>(Func<StudioView, T> look) => File.Read(look);

    private Turn TurnOf(
        string words, string name, Member? member, long account, ChatKind chat, StudioSession session)
    {
        var settings = session.Studio.Settings()!;
        var zone = new StudioZone(TimeZoneInfo.FindSystemTimeZoneById(settings.Zone));
        var who = new Speaker(name, member?.Role == Role.Steward, member?.Units ?? settings.Units);
        return new Turn(words, chat, who, zone.LocalOf(Now))
        {
            Zone = zone,
            Now = Now,
            Member = member,
            UserId = account,
            ChatId = chat == ChatKind.Group ? -100 : account,
            NewCode = length => new string((char)('A' + drawn++), length),
        };
    }

    private static Outcome Taken(Turn turn, StudioSession session) =>
        Conversation.Take(turn, new Studio(session, Practice, isSample: false), session)
            ?? throw new InvalidOperationException($"“{turn.Words}” was met with silence.");

    /// <summary>Forgets it.</summary>
    public void Dispose() => File.Dispose();
}
