using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary>Whether the shelf holds what a pour takes.</summary>
internal static class ShelfCheck
{
    private const string Medium = "medium";

    /// <summary>
    /// What is short, of the colours named and of the medium that carries them; none where nothing is.
    /// </summary>
    public static Block? Of(PourAmounts amounts, Colours colours, Studio studio)
    {
        var levels = studio.View.Materials.Levels();
        var materials = studio.View.Materials.All();
        var needs = colours.Names.Select(name => (Name: name, Need: amounts.PerColour)).ToList();
        if (colours.Names.Count == 0)
        {
            needs.Add((Medium, amounts.AllColours));
        }

        var shortages = needs.Select(need => Short(need.Name, need.Need, materials, levels)).OfType<string>().ToList();
        return shortages.Count == 0
            ? null
            : new Block.Caution(
                $"Short: {string.Join("; ", shortages)}.{(studio.IsSample ? " (Invented studio.)" : "")}");
    }

    private static string? Short(
        string name, Volume need, IReadOnlyList<Material> materials, IReadOnlyList<Level> levels)
    {
        var material = materials.FirstOrDefault(one => one.Name == name);
        return material is not null
            && levels.FirstOrDefault(level => level.MaterialId == material.Id)?.Left is Amount.ByVolume left
            && left.Volume < need
            ? $"{name}, {Show.Volume(left.Volume)} here, {Show.Volume(need)} needed"
            : null;
    }
}
