using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Practice;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary>What a cup that already holds something still needs.</summary>
internal static class RatioCup
{
    /// <summary>As many as there are letters for, and lines to show them.</summary>
    public const int MostParts = 8;

    private const string Letters = "ABCDEFGH";

    // Less than a figure shows.
    private const double Nothing = 0.05;

    /// <summary>A for the first part of a ratio, B for the second.</summary>
    public static string Letter(int part) => Letters[part].ToString();

    /// <summary>The name that finds no place in the ratio; none where all do.</summary>
    public static string? Misplaced(MixRatio ratio, IReadOnlyList<CupPart> have) =>
        have.Where((_, i) => Places(have, _ => -1)[i] >= ratio.Parts.Count).Select(part => part.Name).FirstOrDefault();

    /// <summary>What to add, and the new total.</summary>
    /// <param name="ratio">The ratio.</param>
    /// <param name="have">What is there, in the ratio's own basis; every part has its place.</param>
    /// <param name="total">How much it is to become; none: as little as can be.</param>
    /// <param name="isBare">Whether figures stood without a unit.</param>
    /// <param name="studio">The studio.</param>
    public static Reply Of(MixRatio ratio, IReadOnlyList<CupPart> have, Amount? total, bool isBare, Studio studio)
    {
        var forms = studio.View.Materials.All().ToDictionary(material => material.Name, material => material.Form);
        var places = Places(have, name => Fixed(forms, name));
        if (places.Distinct().Count() < places.Length || places.Max() >= ratio.Parts.Count)
        {
            return new Reply(
                new Block.Headline(
                    $"No figure: {string.Join(" and ", have.Select(part => part.Name))} are not the parts of {ratio}."),
                new Block.Line("Name each part once, as A, B and so on."))
            {
                IsTrouble = true,
            };
        }

        var cup = new Cup(
            ratio, have, places, isBare, have.Any(part => part.Name is "A" or "B" || Fixed(forms, part.Name) >= 0));
        if (ratio.By == RatioBy.Mass)
        {
            var wanted = (total as Amount.ByMass)?.Mass;
            var there = cup.There(part => ((Amount.ByMass)part.Amount).Mass);
            return cup.Told(TopUp.Complete(ratio, there, wanted, wanted), there, Show.Mass, mass => mass.Grams, studio);
        }

        var size = (total as Amount.ByVolume)?.Volume;
        var poured = cup.There(part => ((Amount.ByVolume)part.Amount).Volume);
        return cup.Told(
            TopUp.Complete(ratio, poured, size, size), poured, Show.Volume, volume => volume.Millilitres, studio);
    }

    // A, B and C say their place, and so do resin and hardener; other materials take those that are left, as named.
    private static int[] Places(IReadOnlyList<CupPart> have, Func<string, int> isFixed)
    {
        var places = have.Select(part => part.Name.Length == 1
            ? Letters.IndexOf(part.Name[0], StringComparison.Ordinal)
            : isFixed(part.Name)).ToArray();
        for (var i = 0; i < places.Length; i++)
        {
            if (places[i] < 0)
            {
                places[i] = Enumerable.Range(0, have.Count + Letters.Length).First(place => !places.Contains(place));
            }
        }

        return places;
    }

    private static int Fixed(Dictionary<string, MaterialForm> forms, string name) =>
        !forms.TryGetValue(name, out var form) ? -1
        : form switch
        {
            MaterialForm.ResinA => 0,
            MaterialForm.HardenerB => 1,
            _ => -1,
        };

    private sealed class Cup(MixRatio ratio, IReadOnlyList<CupPart> have, int[] places, bool isBare, bool isResin)
    {
        public T[] There<T>(Func<CupPart, T> amount)
            where T : struct => [.. ratio.Parts.Select((_, i) => At(i) is { } part ? amount(part) : default)];

        public Reply Told<T>(
            Finding<Completion<T>> finding, T[] there, Func<T, string> show, Func<T, double> size, Studio studio)
            => finding switch
            {
                Finding<Completion<T>>.Found found => Added(found.Value, there, show, size, null, studio),
                Finding<Completion<T>>.Cautioned full => Added(full.Value, there, show, size,
                    $"First stir and take {show(full.Value.TakeOut)} out; ", studio),
                Finding<Completion<T>>.None none => new Reply(
                    new Block.Headline($"No figure: {none.Why}."), new Block.Line(none.Instead))
                {
                    IsTrouble = true,
                },
                _ => throw new InvalidOperationException("A cup is completed or it is not."),
            };

        private Reply Added<T>(
            Completion<T> done, T[] there, Func<T, string> show, Func<T, double> size, string? first, Studio studio)
        {
            var adds = done.Add.Select((add, i) => (Add: add, Place: i)).Where(one => size(one.Add) >= Nothing)
                .Select(one => $"{show(one.Add)} {Name(one.Place, isLong: true)}").ToList();
            var add = adds.Count > 0 ? "add " + string.Join(" and ", adds) : $"nothing to add: it stands at {ratio}";
            var unit = ratio.By == RatioBy.Mass ? "g" : "ml";
            var parts = string.Join(
                " : ", ratio.Parts.Select((part, i) => $"{Show.Number(part, 3)} {Name(i, isLong: false)}"));
            List<Block> blocks =
            [
                new Block.Headline(first is null ? char.ToUpperInvariant(add[0]) + add[1..] : first + add),
                FitRows.Of(
                [
                    .. ratio.Parts.Select((_, i) => new Figure(
                        Name(i, isLong: false),
                        (first is null ? show(there[i]).Split(' ')[0] + " " : "") + $"+ {show(done.Add[i])}")),
                    new Figure("New total", show(done.Total)),
                ]),
                new Block.Line(
                    $"{parts}, by {(ratio.By == RatioBy.Mass ? "weight" : "volume")}."
                    + (isBare ? $" Taken as {unit}." : "")),
            ];
            if (isResin)
            {
                blocks.Add(Cautions.InShort(studio, SafetySubject.ResinSkin, SafetySubject.CupHeat));
            }

            return new Reply(blocks, []);
        }

        private CupPart? At(int place) => Array.IndexOf(places, place) is var index and >= 0 ? have[index] : null;

        private string Name(int place, bool isLong) => At(place)?.Name
            ?? (isLong && !have.All(part => part.Name.Length == 1)
                ? $"of the other part ({Letter(place)})"
                : Letter(place));
    }
}
