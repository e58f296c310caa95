using StudioBot.Chat.Reading.Values;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary>What pours and coats take from the studio's shelf, material by material.</summary>
internal sealed class PourNeeds(Studio studio)
{
    /// <summary>What carries the colours.</summary>
    public const string Medium = "medium";

    // Low-sheen interior wall paint is the usual pillow (common practice).
    private const string Base = "wall paint";
    private const string Activator = "activator";
    private const string Cup = "cup";
    private const string PartA = "resin A";
    private const string PartB = "hardener B";

    private readonly IReadOnlyList<Material> _materials = studio.View.Materials.All();
    private readonly List<Need> _needs = [];
    private readonly List<string> _unknown = [];

    /// <summary>Each material once.</summary>
    public IReadOnlyList<Need> All => _needs;

    /// <summary>What the studio has no material for.</summary>
    public IReadOnlyList<string> Unknown => _unknown;

    /// <summary>A pour, so many times: its layers with what stays in their cups, and the cups.</summary>
    /// <remarks>Colours without names are medium with the studio's powders in equal shares; named ones go in as they
    /// are, powders in medium.</remarks>
    public void Pour(PourAmounts amounts, Colours colours, int times = 1)
    {
        var waste = PourAmounts.WasteOfACup;
        Layer(Base, amounts.Base, times);
        Layer(Activator, amounts.Activator, times);
        if (amounts.AllColours.Millilitres > 0)
        {
            var each = (amounts.PerColour + waste) * times;
            Named(colours.Names, each);
            Powdered(
                [.. _materials.Where(material => material.Form == MaterialForm.Powder)],
                each * (amounts.Colours - colours.Names.Count));
        }

        Add(Cup, amounts.Cups * times);
    }

    /// <summary>So much in the cup of each of these colours: paints as they are, powders in medium.</summary>
    public void Named(IReadOnlyList<string> names, Volume each)
    {
        foreach (var name in names)
        {
            Colour(name, each);
        }
    }

    /// <summary>The parts of a coat, and the cups it is mixed in.</summary>
    public void Coat(ResinAmounts resin, int cups)
    {
        Add(PartA, resin.PartA.Volume.Millilitres);
        Add(PartB, resin.PartB.Volume.Millilitres);
        Add(Cup, cups);
    }

    /// <summary>Bare surfaces that the studio keeps by the piece: tile 10cm.</summary>
    /// <returns>Whether all of them are kept here.</returns>
    public bool Surfaces(SurfaceSet surfaces, int times = 1)
    {
        var isAll = true;
        foreach (var group in surfaces.Groups)
        {
            var kept = group.Surface is Surface.Panel { IsSquare: true } square
                ? _materials.FirstOrDefault(one => one.Form == MaterialForm.Counted && IsBare(one.Name, square.Width))
                : null;
            isAll &= kept is not null;
            if (kept is not null)
            {
                Add(kept.Name, group.Count * times);
            }
        }

        return isAll;
    }

    /// <summary>So much of a material of this name.</summary>
    public void Add(string name, double units)
    {
        if (units <= 0)
        {
            return;
        }

        if (_materials.FirstOrDefault(one => one.Name == name) is not { } material)
        {
            if (!_unknown.Contains(name))
            {
                _unknown.Add(name);
            }

            return;
        }

        var at = _needs.FindIndex(need => need.Material.Id == material.Id);
        if (at < 0)
        {
            _needs.Add(new Need(material, units));
        }
        else
        {
            _needs[at] = new Need(material, _needs[at].Units + units);
        }
    }

    private void Layer(string name, Volume layer, int times)
    {
        if (layer.Millilitres > 0)
        {
            Add(name, ((layer + PourAmounts.WasteOfACup) * times).Millilitres);
        }
    }

    private void Colour(string name, Volume each)
    {
        if (_materials.FirstOrDefault(one => one.Name == name) is { Form: MaterialForm.Powder } powder)
        {
            Powdered([powder], each);
        }
        else
        {
            Add(name, each.Millilitres);
        }
    }

    // Powder hardly adds to the volume of the medium it is stirred into.
    private void Powdered(IReadOnlyList<Material> powders, Volume medium)
    {
        if (medium.Millilitres <= 0)
        {
            return;
        }

        Add(Medium, medium.Millilitres);
        foreach (var powder in powders)
        {
            Add(powder.Name, (medium / powders.Count * studio.Practice.Pours.PowderPerMedium.Value).Grams);
        }
    }

    private static bool IsBare(string name, Length width)
    {
        var words = name.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Any(SurfaceWords.IsNoun) && words.Contains(Figures.Typed(width));
    }
}
