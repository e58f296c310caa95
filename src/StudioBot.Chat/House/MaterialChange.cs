using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.House;

/// <summary>What a steward sets of a material, one thing after the other, each said with what it was.</summary>
internal sealed class MaterialChange(Material material)
{
    private readonly List<string> said = [];

    /// <summary>The material as it is to be.</summary>
    public Material Now { get; private set; } = material;

    /// <summary>What changed.</summary>
    public IReadOnlyList<string> Said => said;

    /// <summary>Of a liquid; of a powder it is how it lies in a spoon, as people weigh it.</summary>
    public void Density(Density density)
    {
        if (Now.Form == MaterialForm.Powder)
        {
            Spoon(OwnMeasure.Teaspoon * density);
            return;
        }

        Put("density", Show.Number(density.GramsPerMillilitre, 3) + " g/ml",
            Now.Density is { } was ? Show.Number(was.GramsPerMillilitre, 3) : null);
        Now = Now with { Density = density };
    }

    /// <summary>What a level teaspoon of a powder weighs.</summary>
    public void Spoon(Mass weighs)
    {
        Put("a level teaspoon is", Show.Mass(weighs), Now.GramsPerTeaspoon is { } was ? Show.Mass(was) : null);
        Now = Now with { GramsPerTeaspoon = weighs };
    }

    /// <summary>What its bottle weighs empty.</summary>
    public void Bottle(Mass weighs)
    {
        Put("its empty bottle weighs", Show.Mass(weighs), Now.Bottle is { } was ? Show.Mass(was) : null);
        Now = Now with { Bottle = weighs };
    }

    /// <summary>The level at which it counts as low.</summary>
    public void Low(Amount level)
    {
        Put("low level", Show.Amount(level), Now.Low is { } was ? Show.Amount(was) : null);
        Now = Now with { Low = level };
    }

    /// <summary>A size it is sold in, in place of one of the same size.</summary>
    public void Pack(Pack pack)
    {
        var same = Now.Packs.FirstOrDefault(one => one.Holds == pack.Holds);
        Put($"a pack of {Show.Amount(pack.Holds)} costs", pack.Price?.ToString() ?? "what nobody said",
            same?.Price?.ToString());
        Now = Now with { Packs = [.. Now.Packs.Where(one => one != same), pack] };
    }

    /// <summary>How long it keeps once opened.</summary>
    public void Keeps(TimeSpan time)
    {
        Put("once opened it keeps", Days(time), Now.ShelfLife is { } was ? Days(was) : null);
        Now = Now with { ShelfLife = time };
    }

    /// <summary>How long an order takes.</summary>
    public void Delivery(TimeSpan time)
    {
        Put("an order takes", Days(time), Now.LeadTime is { } was ? Days(was) : null);
        Now = Now with { LeadTime = time };
    }

    /// <summary>Whether all bear what anybody takes of it.</summary>
    public void Shared(bool isShared)
    {
        said.Add(isShared ? "what is used of it, all bear" : "who uses it, bears it");
        Now = Now with { IsShared = isShared };
    }

    private static string Days(TimeSpan time) => time.Days == 1 ? "1 day" : $"{time.Days} days";

    private void Put(string what, string now, string? was) =>
        said.Add($"{what} {now}{(was is null || was == now ? "" : $", was {was}")}");
}
