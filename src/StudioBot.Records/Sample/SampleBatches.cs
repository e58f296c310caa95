using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;
using StudioBot.Records.Recipes;

namespace StudioBot.Records.Sample;

/// <summary>What the invented studio has mixed: batches 1 to 13.</summary>
internal static class SampleBatches
{
    private static readonly (string Recipe, string Maker, int Month, int Day, int Hour, double Millilitres)[] Mixed =
    [
        ("medium", "Mira", 10, 27, 16, 400),
        ("medium", "Pia", 10, 28, 17, 800),
        ("activator", "Mira", 10, 29, 17, 50),
        ("medium", "Tomas", 10, 30, 10, 400),
        ("medium", "Mira", 11, 2, 18, 800),
        ("medium", "Pia", 11, 5, 17, 400),
        ("medium", "Jonas", 11, 8, 11, 600),
        ("activator", "Pia", 11, 9, 17, 100),
        ("medium", "Tomas", 11, 12, 18, 800),
        ("medium", "Mira", 11, 16, 17, 800),
        ("activator", "Mira", 11, 18, 17, 100),
        ("medium", "Mira", 11, 21, 10, 1200),
        ("medium", "Pia", 11, 24, 17, 400),
    ];

    public static void WriteInto(
        StudioSession session,
        IReadOnlyDictionary<string, Member> members,
        IReadOnlyDictionary<string, Recipe> recipes,
        Act act)
    {
        foreach (var (recipe, maker, month, day, hour, millilitres) in Mixed)
        {
            session.Batches.Add(
                recipes[recipe],
                members[maker],
                SampleTime.At(month, day, hour),
                Volume.FromMillilitres(millilitres),
                act);
        }
    }
}
