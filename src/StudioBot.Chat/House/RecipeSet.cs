using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.House;

/// <summary><c>recipe reef 60 ml medium 20 ml white 20 ml blue mica</c>: a new recipe.</summary>
internal sealed class RecipeSet : Act
{
    private const int MostRows = 7;

    private static readonly NewNameSlot Name = new("recipe", "a name", "reef") { IsRequired = true };
    private static readonly ItemsSlot Parts = new() { Key = "parts", IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "recipe", Room.House, "A new recipe.",
        [Name, Parts],
        ["recipe reef 60 ml medium 20 ml white 20 ml blue mica"])
    {
        More = "Or other parts of one.",
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said)
    {
        var volumes = said.Or(Parts, new ItemList([])).Items
            .Select(item => item.Amount)
            .OfType<Amount.ByVolume>()
            .ToList();
        return volumes.Count > 0
            ? [new("volume_ml", Figures.Of(volumes.Sum(volume => volume.Volume.Millilitres)))]
            : [];
    }

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (name, items) = (said.Of(Name), said.Of(Parts));
        var session = writing.Session;
        var recipes = session.Recipes.All();
        var known = recipes.FirstOrDefault(one => one.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        var material = session.Materials.All()
            .FirstOrDefault(one => one.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (known is null && material is { Form: not MaterialForm.Mixture })
        {
            return OwnMeasure.Trouble(
                $"“{name}” is a material", "A recipe has a name of its own:", Sheet.Examples[0], writing);
        }

        var makes = known is null ? material?.Name : known.Makes;
        var (parts, trouble) = PartsOf(items, writing);
        if ((trouble ?? Against(parts, makes, recipes, writing)) is { } refused)
        {
            return refused;
        }

        if (known is null)
        {
            session.Recipes.Add(name, parts, material, writing.Act);
        }
        else
        {
            session.Recipes.Change(known, parts, writing.Act);
        }

        return Saved(known, name, parts, makes);
    }

    // A powder by the spoon is kept by weight; what is weighed stays weighed.
    private static (IReadOnlyList<Part> Parts, Reply? Trouble) PartsOf(ItemList items, Writing writing)
    {
        var materials = writing.Session.Materials.All().ToDictionary(material => material.Name);
        List<Part> parts = [];
        foreach (var item in items.Items)
        {
            var material = materials[item.Material];
            if (parts.Exists(part => part.MaterialId == material.Id))
            {
                return ([], OwnMeasure.Trouble(
                    $"“{material.Name}” stands there twice",
                    "Once with all of it, like this:",
                    "recipe reef 60 ml medium",
                    writing));
            }

            if (material.Form == MaterialForm.Counted)
            {
                return ([], OwnMeasure.Trouble(
                    $"“{material.Name}” is counted: no part of a mixture", "Try", "recipe reef 60 ml medium", writing));
            }

            var (own, trouble) = OwnMeasure.Of(material, item.Amount, writing);
            if (trouble is not null)
            {
                return ([], trouble);
            }

            parts.Add(Part.Of(material, item.Amount is Amount.ByMass ? item.Amount : own!.Need.Amount));
        }

        return (parts, null);
    }

    // What it makes is no part of it, nor of what is mixed into it.
    private static Reply? Against(
        IReadOnlyList<Part> parts, string? makes, IReadOnlyList<Recipe> recipes, Writing writing)
    {
        HashSet<string> inside = [];
        Queue<string> open = new(parts.Select(part => part.Material));
        while (makes is not null && open.TryDequeue(out var name))
        {
            if (name == makes)
            {
                return OwnMeasure.Trouble(
                    $"“{makes}” can't be a part of itself",
                    "Name what it is mixed from:",
                    $"recipe {makes} 300 ml neutral base",
                    writing);
            }

            if (inside.Add(name) && recipes.FirstOrDefault(one => one.Makes == name) is { } deeper)
            {
                foreach (var part in deeper.Parts)
                {
                    open.Enqueue(part.Material);
                }
            }
        }

        return null;
    }

    private static Reply Saved(Recipe? before, string name, IReadOnlyList<Part> parts, string? makes)
    {
        List<Block> blocks =
        [
            new Block.Headline(before is null
                ? $"{Sentences.Capital(name)} is a recipe now."
                : $"{Sentences.Capital(before.Name)} has other parts from now on."),
            FitRows.Of([.. parts.Take(MostRows).Select(part => new Figure(part.Material, Show.Amount(part.Amount)))]),
        ];
        if (before is not null)
        {
            var was = string.Join(
                ", ", before.Parts.Take(3).Select(part => $"{Show.Amount(part.Amount)} {part.Material}"));
            blocks.Add(new Block.Line($"It was {was}{(before.Parts.Count > 3 ? " …" : "")}."));
        }

        blocks.Add(new Block.Line(makes is null
            ? "It makes no stock: a batch of it goes into pours."
            : $"A batch of it goes on the shelf as {makes}."));
        return new Reply(blocks, [new Button("At another size", $"scale {before?.Name ?? name} to 400 ml")]);
    }
}
