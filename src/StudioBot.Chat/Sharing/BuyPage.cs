using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Stock;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>Whether one material is to be bought, and the figures that say so.</summary>
internal static class BuyPage
{
    /// <summary>The answer, its figures, and what they rest on.</summary>
    public static Reply Of(ShelfNeed need, Studio studio)
    {
        List<Figure> rows = [new Figure("Left", need.Level.IsOut ? "none" : Show.Amount(need.Level.Left))];
        if (need.Lasts is { } lasts)
        {
            rows.Add(new Figure("Lasts about", lasts));
        }

        if (need.Use.Rate.PerDay > 0)
        {
            rows.Add(new Figure("A day takes", Show.Significant(need.Use.Rate.PerDay) + Unit(need.Material)));
            rows.Add(new Figure("Reorder point", Show.Amount(new Need(need.Material, need.Reorder).Amount)));
        }

        if (need.Material.Low is { } low)
        {
            rows.Add(new Figure("Your own low level", Show.Amount(low)));
        }

        return new Reply(
            [
                new Block.Headline(Headline(need, studio)),
                new Block.Figures(rows),
                .. Grounds(need).Select(words => new Block.Line(words)),
                .. studio.IsSample ? (Block[])[new Block.Line(Sentences.Invented(studio).Trim())] : [],
            ],
            [
                new Button("What to buy", "buy"),
                new Button(Labels.Short($"Stock {need.Material.Name}"), $"stock {need.Material.Name}"),
            ]);
    }

    private static string Headline(ShelfNeed need, Studio studio)
    {
        var name = need.Material.Name;
        if (!need.IsWanted)
        {
            return $"{Sentences.Capital(name)}: nothing to {(need.IsMixed ? "mix" : "buy")} yet";
        }

        var currency = need.IsMixed || need.Packs.Cost is null ? "" : $" {studio.View.Studio.Settings()?.Currency}";
        return $"{(need.IsMixed ? "Mix" : "Buy")} {name}: {need.Words()}{currency}".TrimEnd();
    }

    private static IEnumerable<string> Grounds(ShelfNeed need)
    {
        if (need.Units < 0)
        {
            yield return "The book shows less than nothing: count it.";
        }

        yield return need.Use switch
        {
            { Rate.PerDay: <= 0 } => $"No use in the last {need.Use.Days} days: only your own low level speaks.",
            { Rate.IsLittleData: true } =>
                $"Little data: used on {Times(need.Use.Uses)} in {need.Use.Days} days; a guess.",
            _ => $"Rests on {need.Use.Days} days, {need.Use.Uses} of them with use; an order takes "
                + $"{ShelfNeed.Days(need.Lead.Days)}{(need.Material.LeadTime is null ? " unless set" : "")}.",
        };
        var rate = need.Use.Rate;
        if (need is { IsWanted: true, IsMixed: false, Packs.Surplus: >= 1 and var surplus }
            && Forecast.DaysOfCover(surplus, rate) is var cover
            && SurplusDays(cover) is { } days)
        {
            var tooLong = need.Material.ShelfLife is { } life && need.Material.ShelfLife < TimeSpan.FromDays(days)
                ? $", longer than the {ShelfNeed.Days(life.TotalDays)} it keeps once open"
                : "";
            yield return $"{Show.Amount(new Need(need.Material, surplus).Amount)} over lasts about "
                + $"{ShelfNeed.Days(days)}{tooLong}.";
        }
    }

    private static double? SurplusDays(Finding<TimeSpan> cover) => cover switch
    {
        Finding<TimeSpan>.Found found => found.Value.TotalDays,
        Finding<TimeSpan>.Cautioned found => found.Value.TotalDays,
        _ => null,
    };

    private static string Times(int uses) => uses == 1 ? "1 day" : $"{uses} days";

    private static string Unit(Material material) => material.Form switch
    {
        MaterialForm.Powder => " g",
        MaterialForm.Counted => "",
        _ => " ml",
    };
}
