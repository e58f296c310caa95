using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.House;
using StudioBot.Records.Members;
using StudioBot.Records.Rooms;

namespace StudioBot.Records.Sample;

/// <summary>An invented studio in the middle of its week, to try everything on: nobody and nothing in it is real.
/// </summary>
public static class SampleStudio
{
    /// <summary>The moment its last record was made; it knows nothing later. A Wednesday, 8:40 in its zone.</summary>
    public static DateTimeOffset LastRecord { get; } = SampleTime.At(11, 25, 8, 40);

    /// <summary>Writes it whole into a studio that is still empty.</summary>
    /// <exception cref="InvalidOperationException">The studio has been founded already.</exception>
    public static void WriteInto(StudioSession session)
    {
        if (session.Studio.Settings() is { } there)
        {
            throw new InvalidOperationException($"“{there.Name}” is here already; a sample needs an empty studio.");
        }

        session.Studio.Change(new StudioSettings(
            "Lantern Yard Pour Room", "Europe/Vienna", "EUR", UnitSystem.Metric, Volume.FromMillilitres(20)));
        var act = session.Acts.Begin(new NewAct(ActRecords.Opening, null, "opening", LastRecord));
        var members = Join(session);
        var shelves = PutUpShelves(session, act);
        var materials = SampleMaterials.WriteInto(session, act);
        var recipes = SampleRecipes.WriteInto(session, materials);
        SampleBatches.WriteInto(session, members, recipes, act);
        SamplePieces.WriteInto(session, members, shelves, recipes, act);
    }

    private static Dictionary<string, Member> Join(StudioSession session)
    {
        var founding = SampleTime.At(9, 1, 18);
        Member[] members =
        [
            session.Members.Add("Mira", Role.Steward, founding),
            session.Members.Add("Pia", Role.Member, founding),
            session.Members.Add("Tomas", Role.Member, SampleTime.At(9, 8, 18)),
            session.Members.Add("Jonas", Role.Member, SampleTime.At(10, 6, 18)),
        ];
        return members.ToDictionary(member => member.Name);
    }

    private static Dictionary<string, Shelf> PutUpShelves(StudioSession session, Act act)
    {
        var studio = session.Rooms.Add("studio");
        var cupboard = session.Rooms.Add("cupboard");
        Read(session, studio, 19, 58, SampleTime.At(11, 23, 18, 10), act);
        Read(session, cupboard, 23, 45, SampleTime.At(11, 24, 17, 30), act);
        Read(session, studio, 20, 55, LastRecord, act);

        return (from rack in "ABC"
                from place in "1234"
                select session.Rooms.AddShelf($"{rack}{place}", rack == 'C' ? cupboard : studio))
            .ToDictionary(shelf => shelf.Label);
    }

    private static void Read(
        StudioSession session, Room room, double celsius, double percent, DateTimeOffset at, Act act) =>
        session.Rooms.Read(room, Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(percent), at, act);
}
