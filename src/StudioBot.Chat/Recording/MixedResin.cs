using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Craft.Mixing;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Recording;

/// <summary>What was mixed for a coat: the parts as measured, or a total that its ratio splits.</summary>
internal static class MixedResin
{
    /// <summary>The parts and totals by key.</summary>
    public static IEnumerable<Meaning> Of(IReadOnlyList<CupPart> parts, Amount? total, MixRatio? ratio)
    {
        if (parts.Count > 0)
        {
            return Measured(parts);
        }

        return (total, ratio) switch
        {
            (Amount.ByVolume volume, { By: RatioBy.Volume }) =>
                [new("answer_parts_ml", Joined(Parts.Of(ratio, volume.Volume).Select(part => part.Millilitres)))],
            (Amount.ByMass mass, { By: RatioBy.Mass }) =>
                [new("answer_parts_g", Joined(Parts.Of(ratio, mass.Mass).Select(part => part.Grams)))],
            _ => [],
        };
    }

    private static IEnumerable<Meaning> Measured(IReadOnlyList<CupPart> parts)
    {
        var isMass = parts.All(part => part.Amount is Amount.ByMass);
        var values = parts.Select(part => part.Amount switch
        {
            Amount.ByVolume volume => volume.Volume.Millilitres,
            Amount.ByMass mass => mass.Mass.Grams,
            _ => 0,
        }).ToList();
        return
        [
            new(isMass ? "mass_g" : "volume_ml", Figures.Of(values.Sum())),
            new(isMass ? "parts_g" : "parts_ml", Joined(values)),
        ];
    }

    private static string Joined(IEnumerable<double> values) => string.Join(':', values.Select(Figures.Of));
}
