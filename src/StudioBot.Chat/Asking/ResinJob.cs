using StudioBot.Chat.Reading.Values;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary>Everything one resin answer rests on, worked out once for its pages.</summary>
/// <param name="System">The resin as practice knows it.</param>
/// <param name="Resin">Its parts in the ratio asked for.</param>
/// <param name="DensitiesFrom">Where the densities come from.</param>
/// <param name="Need">How much.</param>
/// <param name="Coats">In how many coats.</param>
/// <param name="Film">Of one coat; none where a total was said.</param>
/// <param name="Air">The air it is poured in.</param>
/// <param name="Said">What was said of that air.</param>
/// <param name="Taken">What nobody said.</param>
internal sealed record ResinJob(
    ResinSystem System,
    Resin Resin,
    string DensitiesFrom,
    ResinNeed Need,
    int Coats,
    Length? Film,
    AirTaken Air,
    AirWords? Said,
    IReadOnlyList<string> Taken)
{
    /// <summary>Parts of the total.</summary>
    public ResinAmounts Parts => Resin.Split(Need.Total);

    /// <summary>The cups of one coat.</summary>
    public CupPlan Cups => CupPlan.Of(Resin, Need.OneCoat, System.Cups.Value.In(Air.Temperature));

    /// <summary>How long it flows once spread.</summary>
    public Finding<WorkingTime> Working => Gel.Over(Air.Flow(System));

    /// <summary>How long it can be worked here, beside its sheet.</summary>
    public GelPace Gel { get; init; } = GelPace.OfSheet;

    /// <summary>What was told gelled and is left out, by name; empty where nothing is.</summary>
    public string GelSlips { get; init; } = "";

    /// <summary>Whether this air suits it; none where that can't be said.</summary>
    public ResinAir? Verdict =>
        Air.Room is Finding<RoomAir>.Found room ? ResinAir.Judge(room.Value, Said?.Surface, Said?.Night) : null;

    /// <summary>The resin of this ratio, with the studio's own densities where it holds one A and one B.</summary>
    public static (ResinSystem System, Resin Resin, string DensitiesFrom) Resins(MixRatio? ratio, Studio studio)
    {
        var system = ratio is null ? studio.Practice.UsualResin
            : studio.Practice.Resins.FirstOrDefault(one => one.Ratio.Value.Equals(ratio)) ?? studio.Practice.UsualResin;
        var materials = studio.View.Materials.All();
        var a = materials.Where(material => material.Form == MaterialForm.ResinA).ToList();
        var b = materials.Where(material => material.Form == MaterialForm.HardenerB).ToList();
        return a is [{ Density: { } denseA }] && b is [{ Density: { } denseB }]
            ? (system, new Resin(ratio ?? system.Ratio.Value, denseA, denseB), "as recorded")
            : (
                system,
                new Resin(ratio ?? system.Ratio.Value, system.DensityA.Value, system.DensityB.Value),
                system.DensityA.Provenance.Words);
    }

    /// <summary>2:1 by volume.</summary>
    public string Ratio => Words(Resin.Ratio);

    /// <summary>2:1 by volume.</summary>
    public static string Words(MixRatio ratio) => $"{ratio} by {(ratio.By == RatioBy.Mass ? "weight" : "volume")}";
}
