using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>Whether a record takes of a material on a day before any of it came.</summary>
internal static class FirstCame
{
    /// <summary>Asks whether it was here; none where some had come by then, or who says so agreed.</summary>
    /// <param name="needs">What is taken.</param>
    /// <param name="said">The record.</param>
    /// <param name="writing">Where it is written.</param>
    /// <param name="labels">The lots that were named: their own days count.</param>
    public static Reply? Against(
        IEnumerable<Need> needs, Phrase said, Writing writing, IReadOnlyList<string>? labels = null) =>
        writing.Turn.IsAgreed || Doubt(needs.Select(need => need.Material), labels ?? [], writing) is not { } doubt
            ? null
            : new Reply(
                [
                    new Block.Headline($"{doubt}. Nothing recorded."),
                    new Block.Line("Another day? Or was it here, and its delivery booked late?"),
                ],
                [new Button("It was here", said.Line) { Agrees = true }])
            {
                IsTrouble = true,
            };

    /// <summary>White is here since 14 Sep, not on 1 Jan 2020; none where some of each had come by then.</summary>
    public static string? Doubt(IEnumerable<Material> materials, IReadOnlyList<string> labels, Writing writing)
    {
        var named = LotsNamed.Of(labels, writing).ToLookup(one => one.Material.Id, one => one.Lot);
        return materials.Select(Early).OfType<string>().FirstOrDefault();

        string? Early(Material material)
        {
            var isNamed = named.Contains(material.Id);
            var lots = isNamed ? named[material.Id] : writing.Session.Lots.Of(material.Id);
            var first = lots.MinBy(lot => lot.BoughtAt);
            if (first is null || DayOf(writing.HappenedAt) >= DayOf(first.BoughtAt))
            {
                return null;
            }

            var what = Sentences.Capital(material.Name) + (isNamed ? $" {first.Label}" : "");
            return $"{what} is here since {Show.Date(DayOf(first.BoughtAt), writing.Turn)}, "
                + $"not on {Show.Date(DayOf(writing.HappenedAt), writing.Turn)}";
        }

        DateOnly DayOf(DateTimeOffset moment) => DateOnly.FromDateTime(writing.Turn.Zone.LocalOf(moment));
    }
}
