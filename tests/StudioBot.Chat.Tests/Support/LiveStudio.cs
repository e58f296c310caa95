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

    private static readonly Craft.Practice.TradePractice Practice =
        TradeSettings.Load(Path.Combine(AppContext.BaseDirectory, "config")) is TradeReading.Read read
            ? read.Practice
            : throw new InvalidOperationException("The shipped trade values do not load.");

    private LiveStudio(StudioFile file) => File = file;

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
        var settings = session.Studio.Settings()!;
        var zone = new StudioZone(TimeZoneInfo.FindSystemTimeZoneById(settings.Zone));
        var member = session.Members.All().First(one => one.Name == by);
        var turn = new Turn(
            words, chat, new Speaker(by, member.Role == Role.Steward, member.Units ?? settings.Units), zone.LocalOf(Now))
        {
            Zone = zone,
            Now = Now,
            Member = member,
            UserId = member.Id,
            IsAgreed = agreed,
            Photo = photo,
        };
        return Conversation.Take(turn, new Studio(session, Practice, isSample: false), session)
            ?? throw new InvalidOperationException($"“{words}” was met with silence.");
    });

    /// <summary>The words of what comes of a line.</summary>
    public string Hear(string words, string by = "Mira", bool agreed = false) =>
        Say(words, by, agreed).Reply.PlainText.ReplaceLineEndings("\n");

    /// <summary>Looks into the records.</summary>
    public T Look<T>(Func<StudioView, T> look) => File.Read(look);

    /// <summary>Forgets it.</summary>
    public void Dispose() => File.Dispose();
}
