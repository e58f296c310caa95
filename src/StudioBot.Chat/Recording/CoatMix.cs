using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Recording;

/// <summary>What was mixed for a coat, in its two parts.</summary>
/// <param name="A">Of part A; above zero.</param>
/// <param name="B">Of part B; above zero.</param>
/// <param name="System">The resin as practice knows it.</param>
/// <param name="Resin">Its parts in the ratio that was asked for, else the usual one.</param>
internal sealed record CoatMix(Volume A, Volume B, ResinSystem System, Resin Resin)
{
    private const string Sample = "coat 17 120 A 60 B lots R-3 H-12";

    /// <summary>Which material part A was named as; none where only A was said.</summary>
    public Material? NamedA { get; private init; }

    /// <summary>Which material part B was named as; none where only B was said.</summary>
    public Material? NamedB { get; private init; }

    /// <summary>Whether the two were measured apart, so that their ratio is to be checked.</summary>
    public bool IsMeasured { get; private init; }

    /// <summary>Both together.</summary>
    public Volume Total => A + B;

    /// <summary>How far off the ratio it is.</summary>
    public RatioCheck Check => RatioCheck.Of(Resin, A, B);

    /// <summary>The mix as it was said, or the trouble with it.</summary>
    /// <param name="parts">Two parts, or none where a total was said.</param>
    /// <param name="total">The total; none where only parts were said.</param>
    /// <param name="ratio">The ratio; none where none was said.</param>
    /// <param name="studio">The studio.</param>
    public static (CoatMix? Mix, Reply? Trouble) Of(
        IReadOnlyList<CupPart> parts, Amount? total, MixRatio? ratio, Studio studio)
    {
        if (ratio is { Parts.Count: not 2 })
        {
            return (null, TalkedOf.Trouble($"{ratio} has more than two parts: a resin is A and B.", Sample));
        }

        var (system, resin, _) = ResinJob.Resins(ratio, studio);
        if (parts.Count == 0)
        {
            var split = total is Amount.ByMass mass
                ? resin.Split(mass.Mass)
                : resin.Split(((Amount.ByVolume)total!).Volume);
            return (new CoatMix(split.PartA.Volume, split.PartB.Volume, system, resin), null);
        }

        var a = Find(parts, "A", MaterialForm.ResinA, studio);
        var b = Find(parts, "B", MaterialForm.HardenerB, studio);
        if (parts.Count > 2 || a is null || b is null)
        {
            return (null, TalkedOf.Trouble("A coat is of two parts, A and B. Nothing recorded.", Sample));
        }

        var mix = new CoatMix(Volume(a.Value.Amount, resin.PartA), Volume(b.Value.Amount, resin.PartB), system, resin)
        {
            NamedA = a.Value.Material,
            NamedB = b.Value.Material,
            IsMeasured = true,
        };
        return mix.A.Millilitres <= 0 || mix.B.Millilitres <= 0
            ? (null, TalkedOf.Trouble("One of the two parts is nothing. Nothing recorded.", Sample))
            : (mix, Against(mix, total));
    }

    /// <summary>The known resins whose ratio this mix would meet.</summary>
    public IEnumerable<ResinSystem> Others(TradePractice practice) => practice.Resins.Where(one =>
        !one.Ratio.Value.Equals(Resin.Ratio)
        && RatioCheck.Of(new Resin(one.Ratio.Value, Resin.PartA, Resin.PartB), A, B).Verdict == RatioVerdict.Fine);

    // 180 ml 120 A 60 B says it twice, which is fine as long as both say the same.
    private static Reply? Against(CoatMix mix, Amount? total)
    {
        const double rounding = 0.01;
        var said = total switch
        {
            Amount.ByVolume volume => volume.Volume.Millilitres / mix.Total.Millilitres,
            Amount.ByMass mass => mass.Mass.Grams / (mix.A * mix.Resin.PartA + mix.B * mix.Resin.PartB).Grams,
            _ => 1,
        };
        return Math.Abs(said - 1) > rounding
            ? TalkedOf.Trouble(
                $"{Show.Amount(total!)} is not what A and B make together. Nothing recorded.", Sample)
            : null;
    }

    private static (Amount Amount, Material? Material)? Find(
        IReadOnlyList<CupPart> parts, string letter, MaterialForm form, Studio studio)
    {
        var materials = studio.View.Materials.All();
        foreach (var part in parts)
        {
            var material = materials.FirstOrDefault(one => one.Name == part.Name);
            if (part.Name == letter || material?.Form == form)
            {
                return (part.Amount, material);
            }
        }

        return null;
    }

    private static Volume Volume(Amount amount, Density density) => amount switch
    {
        Amount.ByMass mass => mass.Mass / density,
        Amount.ByVolume volume => volume.Volume,
        _ => default,
    };
}
