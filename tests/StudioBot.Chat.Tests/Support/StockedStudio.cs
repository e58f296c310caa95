using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.House;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Stock;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Tests.Support;

/// <summary>A studio in memory with a steward, Mira, and a member, Pia, and what a test writes into it.</summary>
internal sealed class StockedStudio
{
    private readonly StudioFile _file = StudioFile.OpenInMemory();

    public StockedStudio() => (Mira, Pia) = _file.Write(session =>
    {
        session.Studio.Change(new StudioSettings(
            "Copper Lane", "Europe/Vienna", "EUR", UnitSystem.Metric, Volume.FromMillilitres(20)));
        return (
            session.Members.Add("Mira", Role.Steward, On(1)),
            session.Members.Add("Pia", Role.Member, On(1)));
    });

    public Member Mira { get; }

    public Member Pia { get; }

    /// <summary>Nine in the morning of this day of November, in the studio's zone.</summary>
    public static DateTimeOffset On(int day) => new(2026, 11, day, 8, 0, 0, TimeSpan.Zero);

    public static Amount Ml(double millilitres) => new Amount.ByVolume(Volume.FromMillilitres(millilitres));

    /// <summary>Writes something, whose answer the test needs.</summary>
    public T Write<T>(Func<StudioSession, T> work) => _file.Write(work);

    /// <summary>Writes something.</summary>
    public void Write(Action<StudioSession> work) => _file.Write(work);

    /// <summary>A liquid, named.</summary>
    public Material Liquid(string name, double? low = null, MaterialForm form = MaterialForm.Liquid) =>
        Write(session => session.Materials.Add(new NewMaterial(name, form) { Low = low is { } level ? Ml(level) : null }));

    /// <summary>A lot of it comes.</summary>
    public long Bought(Material material, double millilitres, int day, string? label = null) => Write(session =>
        session.Stock.Enter(new NewLot(material, Ml(millilitres), On(day)) { Label = label }, StockReason.Bought, Said(session, "bought", day)));

    /// <summary>Some of it goes, from the oldest lots.</summary>
    public Booked Went(Material material, double millilitres, int day, StockReason reason = StockReason.Used, string? words = null, Member? who = null) =>
        Write(session =>
        {
            var act = Said(session, "used", day, words, who);
            Assert.IsType<Drawn.Taken>(session.Stock.Draw(material, Ml(millilitres), reason, act));
            return act;
        });

    /// <summary>Somebody, Mira unless another is named, writes on this day.</summary>
    public Booked Said(StudioSession session, string kind, int day, string? words = null, Member? who = null) =>
        session.Acts.Begin(new NewAct(kind, who ?? Mira, words ?? kind, On(day)));

    /// <summary>The answer on 25 November, ten in the morning.</summary>
    public Reply Answer(string words, Member? who = null, ChatKind chat = ChatKind.Private) => _file.Read(view =>
    {
        var speaker = who ?? Mira;
        var turn = new Turn(words, chat, new Speaker(speaker.Name, speaker.Role == Role.Steward), Sample.Now);
        var reply = Sample.Conversation.Answer(turn, new Studio(view, Sample.Practice, isSample: false));
        Assert.NotNull(reply);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        return reply;
    });

    /// <summary>The words of the answer.</summary>
    public string Says(string words, Member? who = null, ChatKind chat = ChatKind.Private) => Answer(words, who, chat).PlainText;
}
