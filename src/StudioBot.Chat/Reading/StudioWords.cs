using StudioBot.Craft.Mixing;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading;

/// <summary>Gathers the words of one studio: what its records name, and what the trade calls things.</summary>
internal static class StudioWords
{
    /// <summary>The vocabulary of this studio as it is now.</summary>
    public static Vocabulary Of(Studio studio)
    {
        var view = studio.View;
        var materials = view.Materials.All();
        var techniques = studio.Practice.Techniques;
        List<string> members = [.. view.Members.All().Select(member => member.Name)];
        var names = materials.Select(material => (material.Name, new Named(NameKind.Material, material.Name)))
            .Concat(OtherNames(studio, materials))
            .Concat(view.Recipes.All().Select(recipe => (recipe.Name, new Named(NameKind.Recipe, recipe.Name))))
            .Concat(techniques.SelectMany(technique => technique.OtherNames.Append(technique.Name)
                .Select(word => (word, new Named(NameKind.Technique, technique.Name)))))
            .Concat(view.Members.All().Select(member => (member.Name, new Named(NameKind.Member, member.Name))))
            .Concat(FirstNames.Of(members).Select(one => (one.First, new Named(NameKind.Member, one.Name))))
            .Concat(view.Rooms.All().Select(room => (room.Name, new Named(NameKind.Room, room.Name))));
        return new Vocabulary(
            names,
            view.Lots.Labels(),
            view.Pieces.Numbers(),
            view.Batches.Numbers(),
            view.Rooms.Shelves().Select(shelf => shelf.Label),
            studio.Practice.Faults.Select(fault =>
                new FaultWords(fault.Name, [.. fault.Words.Append(fault.Name).Select(Words)])),
            materials.Where(material => material.Form == MaterialForm.Counted).Select(material => material.Name),
            materials.Where(IsPoured).Select(material => material.Name),
            materials.Where(IsResin).Select(material => material.Name),
            RatiosByMass(studio))
        {
            Scoop = view.Studio.Settings()?.Scoop ?? studio.Practice.Pours.Tools.Scoop.Value,
            Former = view.Members.Names().Values.Except(view.Members.All().Select(member => member.Name))
                .ToDictionary(name => name.ToLowerInvariant()),
            Namesakes = FirstNames.Namesakes(members),
            Reserved = view.Pieces.Reserved().Select(reserved => reserved.Number).ToHashSet(),
        };
    }

    private static string[] Words(string phrase) =>
        phrase.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static IEnumerable<string> RatiosByMass(Studio studio)
    {
        var ratios = studio.Practice.Resins.Select(resin => resin.Ratio.Value).ToList();
        var byVolume = ratios.Where(ratio => ratio.By == RatioBy.Volume).Select(ratio => ratio.ToString());
        return ratios.Where(ratio => ratio.By == RatioBy.Mass).Select(ratio => ratio.ToString()).Except(byVolume);
    }

    private static bool IsResin(Material material) =>
        material.Form is MaterialForm.ResinA or MaterialForm.HardenerB;

    private static bool IsPoured(Material material) =>
        material.Form is not (MaterialForm.Counted or MaterialForm.Powder);

    // What the trade calls a material too, where the studio has it and calls nothing else so.
    private static IEnumerable<(string Word, Named Named)> OtherNames(Studio studio, IReadOnlyList<Material> materials)
    {
        var known = materials.Select(material => material.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return studio.Practice.Materials.Where(starter => known.Contains(starter.Name))
            .SelectMany(starter => starter.OtherNames.Where(word => !known.Contains(word))
                .Select(word => (word, new Named(NameKind.Material, starter.Name))));
    }
}
