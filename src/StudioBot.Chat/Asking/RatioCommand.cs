using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary><c>ratio 3:1 250 ml</c>: the parts of a mixture.</summary>
internal sealed class RatioCommand : Ask
{
    // Parts show best in a round total where nobody says one.
    private const double UsualTotal = 100;

    private static readonly RatioSlot Ratio = new() { IsRequired = true };
    private static readonly CupPartsSlot Have = new();
    private static readonly AmountSlot Total = new("a total", "250 ml") { Bare = Measure.Volume };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "ratio", Room.Asking, "The parts of a mixture.",
        [Ratio, Have, Total],
        ["ratio 3:1 250 ml", "ratio 3:1 have 60 medium 25 thinner", "ratio 2:1 have 80 A"])
    {
        More = "Or what to add to a cup; of medium and thinner the ratio for today's warmth too.",
        Cues =
        [
            new("split/parts {amount}"),
            new("{amount} {ratio}"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said)
    {
        var ratio = said.Of(Ratio);
        if (ratio.Parts.Count > RatioCup.MostParts)
        {
            return new Misread(
                ratio.ToString(), $"has more parts than one mixes: up to {RatioCup.MostParts}", Sheet.Examples[0]);
        }

        if (Figures(said).FirstOrDefault(amount => IsOtherKind(amount, ratio.By, said)) is { } other)
        {
            return new Misread(
                TypedWords.Amount(said, other),
                ratio.By == RatioBy.Mass
                    ? "is a volume and the ratio goes by weight: give g"
                    : "is a mass and the ratio goes by volume: ml, or say by weight",
                ratio.By == RatioBy.Mass ? $"ratio {ratio} by weight have 60 g A" : Sheet.Examples[1]);
        }

        return said.Has(Have) && RatioCup.Misplaced(ratio, said.Of(Have)) is { } name
            ? new Misread(name, $"is one too many: {ratio} has {ratio.Parts.Count} parts", Sheet.Examples[1])
            : null;
    }

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var ratio = said.Of(Ratio);
        var isBare = Figures(said).Any(amount => amount is Amount.ByVolume)
            && !TypedWords.HoldUnit(said, Measure.Volume);
        var total = said.Has(Total) ? InBasis(said.Of(Total), ratio.By) : null;
        if (!said.Has(Have))
        {
            var unit = ratio.By == RatioBy.Mass ? "g" : "ml";
            var taken = total is null ? $"Taken: {UsualTotal} {unit} in all."
                : isBare ? $"Taken as {unit}; the parts are alike in any unit." : null;
            return Split(ratio, total ?? InBasis(Ml(UsualTotal), ratio.By), taken, studio);
        }

        IReadOnlyList<CupPart> have =
            [.. said.Of(Have).Select(part => part with { Amount = InBasis(part.Amount, ratio.By) })];
        var reply = RatioCup.Of(ratio, have, total, isBare, studio);
        return !reply.IsTrouble
            && ratio.By == RatioBy.Volume
            && RatioToday.Of([.. have.Select(part => part.Name)], turn, studio) is { } today
                ? reply with { Blocks = [.. reply.Blocks, today] }
                : reply;
    }

    private static Reply Split(MixRatio ratio, Amount total, string? taken, Studio studio)
    {
        var parts = ratio.By == RatioBy.Mass
            ? Parts.Of(ratio, ((Amount.ByMass)total).Mass).Select(part => Show.OnScale(part))
            : Parts.Of(ratio, ((Amount.ByVolume)total).Volume).Select(Show.Volume);
        List<Block> blocks =
        [
            new Block.Headline(
                $"{Show.Amount(total)} at {ratio} by {(ratio.By == RatioBy.Mass ? "weight" : "volume")}"),
            new Block.Figures([.. parts.Select((part, i) => new Figure("Part " + RatioCup.Letter(i), part))]),
        ];
        List<Button> buttons = [];
        if (total is Amount.ByVolume volume)
        {
            var rounded = ToolRounding.Of(ratio, volume.Volume, Step(volume.Volume, studio));
            if (rounded.Total.Millilitres != volume.Volume.Millilitres)
            {
                blocks.Add(new Block.Line(Rounded(rounded, Step(volume.Volume, studio))));
                buttons.Add(new Button(Show.Volume(rounded.Total), $"ratio {ratio} {Show.Volume(rounded.Total)}"));
            }
        }

        if (taken is not null)
        {
            blocks.Add(new Block.Line(taken));
        }

        return new Reply(blocks, buttons);
    }

    private static string Rounded(RoundedParts rounded, Volume step)
    {
        var parts = string.Join(" + ", rounded.Parts.Select(part => Show.Number(part.Millilitres)));
        var off = rounded.WorstError < 0.0005 ? "ratio kept"
            : $"ratio {Show.Number(rounded.WorstError * 100)} % off"
                + (rounded.DoesForResin ? "" : ": weigh it if it is resin");
        return $"In steps of {Show.Volume(step)}: {parts} = {Show.Volume(rounded.Total)}, {off}.";
    }

    // A cup with marks reads to 5 mL, a small one to 1.
    private static Volume Step(Volume total, Studio studio) => total.Millilitres <= 30
        ? studio.Practice.Pours.Tools.SyringeStep.Value
        : studio.Practice.Pours.Tools.Spoon.Value;

    private static IEnumerable<Amount> Figures(Phrase said) =>
        (said.Has(Have) ? said.Of(Have).Select(part => part.Amount) : [])
            .Concat(said.Has(Total) ? [said.Of(Total)] : []);

    // Bare figures are in the ratio's own basis, whatever it is.
    private static bool IsOtherKind(Amount amount, RatioBy by, Phrase said) => by == RatioBy.Volume
        ? amount is Amount.ByMass
        : amount is Amount.ByVolume && TypedWords.HoldUnit(said, Measure.Volume);

    private static Amount InBasis(Amount amount, RatioBy by) => by == RatioBy.Mass && amount is Amount.ByVolume bare
        ? new Amount.ByMass(Mass.FromGrams(bare.Volume.Millilitres))
        : amount;

    private static Amount.ByVolume Ml(double millilitres) => new(Volume.FromMillilitres(millilitres));
}
