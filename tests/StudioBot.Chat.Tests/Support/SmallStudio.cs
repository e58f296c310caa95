using StudioBot.Chat.Drying;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.House;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Tests.Support;

/// <summary>A studio made for one test: Mira and Pia, a studio with shelves A1 and A2, a cupboard with C1; days count from its first.</summary>
internal sealed class SmallStudio : IDisposable
{
    /// <summary>A Monday at noon in its zone, UTC.</summary>
    public static readonly DateTimeOffset First = new(2026, 11, 2, 11, 0, 0, TimeSpan.Zero);

    public static readonly Surface Panel = new Surface.Panel(Length.FromCentimetres(30), Length.FromCentimetres(30));

    private readonly StudioFile file = StudioFile.OpenInMemory();
    private readonly Dictionary<string, Member> members = [];

    public SmallStudio()
    {
        file.Write(session =>
        {
            session.Studio.Change(new StudioSettings("Small", "Europe/Vienna", "EUR", UnitSystem.Metric, Volume.FromMillilitres(20)));
            members["Mira"] = session.Members.Add("Mira", Role.Steward, First);
            members["Pia"] = session.Members.Add("Pia", Role.Member, First);
            var studio = session.Rooms.Add("studio");
            var cupboard = session.Rooms.Add("cupboard");
            session.Rooms.AddShelf("A1", studio);
            session.Rooms.AddShelf("A2", studio);
            session.Rooms.AddShelf("C1", cupboard);
        });
    }

    public void Dispose() => file.Dispose();

    public static DateTimeOffset Day(double day) => First.AddDays(day);

    /// <summary>Somebody reads a room.</summary>
    public SmallStudio Reads(string room, double celsius, double percent, double day = 0) => Write(day, (session, act) => session.Rooms.Read(
        session.Rooms.All().Single(one => one.Name == room),
        Temperature.FromCelsius(celsius),
        RelativeHumidity.FromPercent(percent),
        Day(day),
        act));

    /// <summary>A bloom on a 30 cm square, unless told otherwise.</summary>
    /// <returns>Its number.</returns>
    public int Pours(
        double day = 0,
        string technique = "bloom",
        double? millilitres = null,
        string? shelf = null,
        Surface? surface = null,
        string maker = "Mira",
        Func<StudioSession, NewPiece, NewPiece>? with = null)
    {
        var number = 0;
        Write(day, (session, act) =>
        {
            var piece = new NewPiece(surface ?? Panel, technique, members[maker], Day(day))
            {
                Poured = millilitres is { } ml ? Volume.FromMillilitres(ml) : null,
                Shelf = session.Rooms.Shelves().SingleOrDefault(one => one.Label == shelf),
            };
            number = session.Pieces.Pour(with is null ? piece : with(session, piece), act);
        });
        return number;
    }

    /// <summary>Something happens to a piece.</summary>
    public SmallStudio Happens(int number, double day, PieceEvent what) =>
        Write(day, (session, act) => session.Pieces.Book(number, what, act));

    public SmallStudio Weighs(int number, double day, double grams) =>
        Happens(number, day, new PieceEvent.Weighed(Mass.FromGrams(grams)));

    public SmallStudio Write(double day, Action<StudioSession, Booked> work)
    {
        file.Write(session => work(session, session.Acts.Begin(new NewAct("test", members["Mira"], "test", Day(day)))));
        return this;
    }

    /// <summary>A material of this density and these solids.</summary>
    public Material Names(string name, double? density, double? solids, MaterialForm form = MaterialForm.Liquid) =>
        file.Write(session => session.Materials.Add(new NewMaterial(name, form)
        {
            Density = density is { } known ? Density.FromGramsPerMillilitre(known) : null,
            SolidsShare = solids,
        }));

    public T Reckons<T>(double day, Func<PieceReckoning, T> look) =>
        file.Read(view => look(new PieceReckoning(view, Sample.Studio.Practice, Day(day))));

    public PieceOutlook Outlook(int number, double day) =>
        Reckons(day, reckoning => reckoning.Of(number)) ?? throw new InvalidOperationException($"{number} does not dry.");

    /// <summary>The outlook in words.</summary>
    public string Says(int number, double day) => new OutlookWords(
        Outlook(number, day),
        new StudioMoment(new Craft.Reminders.StudioZone(TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna")), Day(day))).Whole;

    public Reply Answers(string words, double day, string who = "Mira") => file.Read(view => Sample.Conversation.Answer(
        new Turn(words, ChatKind.Private, new Speaker(who, IsSteward: who == "Mira"), Day(day).DateTime.AddHours(1)),
        new Studio(view, Sample.Studio.Practice, isSample: false)))!;

    /// <summary>How a message is heard: ask, write, error.</summary>
    public string Kind(string words, double day) => file.Read(view => HeardLine.From(Sample.Conversation.Hear(
        new Turn(words, ChatKind.Private, new Speaker("Mira", IsSteward: true), Day(day).DateTime.AddHours(1)),
        new Studio(view, Sample.Studio.Practice, isSample: false))).Kind);
}
