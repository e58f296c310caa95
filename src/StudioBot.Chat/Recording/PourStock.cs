using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Recording;

/// <summary>What a pour takes from the shelf: what was named, as far as its amount is known and it is there.</summary>
internal sealed class PourStock
{
    private const string Activator = "activator";

    private readonly Writing _writing;
    private readonly List<Need> _needs = [];
    private readonly List<(Need Need, Amount Left)> _taken = [];
    private readonly List<string> _lots = [];
    private readonly List<string> _open = [];
    private readonly Material? _ofBatch;
    private readonly Batch? _batch;

    private PourStock(Batch? batch, Writing writing)
    {
        (_writing, _batch) = (writing, batch);
        _ofBatch = batch is null ? null : MadeBy(batch);
    }

    /// <summary>What was poured, as far as its amount is known, whether or not it was there.</summary>
    public IReadOnlyList<Need> Needs => _needs;

    /// <summary>What left the shelf, with what is left there.</summary>
    public IReadOnlyList<(Need Need, Amount Left)> Taken => _taken;

    /// <summary>From which lots, where they have labels.</summary>
    public IReadOnlyList<string> Lots => _lots;

    /// <summary>What could not be booked, and why.</summary>
    public IReadOnlyList<string> Open => _open;

    /// <summary>Whether the batch is what covers the colours last, so that no other of it is named.</summary>
    public bool TakesActivator => _ofBatch?.Name == Activator;

    /// <summary>Works out what was named and takes it from the shelf.</summary>
    /// <param name="amounts">What the pour takes.</param>
    /// <param name="colours">The colours as said; none of them named: by recipe or batch.</param>
    /// <param name="parts">What was said with amounts.</param>
    /// <param name="recipe">The recipe it follows; none where none was said.</param>
    /// <param name="batch">The batch it is poured from; none where none was said.</param>
    /// <param name="writing">Where it is written.</param>
    public static PourStock Take(
        PourAmounts amounts,
        Colours? colours,
        IReadOnlyList<CupPart> parts,
        Recipe? recipe,
        Batch? batch,
        Writing writing)
    {
        var stock = new PourStock(batch, writing);
        stock.WorkOut(amounts, colours, parts, recipe);
        foreach (var need in stock._needs)
        {
            stock.Draw(need);
        }

        return stock;
    }

    private void WorkOut(PourAmounts amounts, Colours? colours, IReadOnlyList<CupPart> parts, Recipe? recipe)
    {
        var each = amounts.PerColour + PourAmounts.WasteOfACup;
        var needs = new PourNeeds(_writing.Studio);
        foreach (var part in parts)
        {
            Said(part, needs);
        }

        // An activator is no colour, whether it comes by batch or by the name of its recipe.
        if (recipe?.Makes == Activator || TakesActivator)
        {
            recipe = recipe?.Makes == Activator ? null : recipe;
            needs.Add(Activator, amounts.Activator.Millilitres > 0
                ? (amounts.Activator + PourAmounts.WasteOfACup).Millilitres
                : 0);
        }

        if (colours is { Names.Count: > 0 })
        {
            var untold = colours.Names.Where(name => parts.All(part => part.Name != name)).ToList();
            needs.Named(untold, each);
            Pigments(colours.Count - colours.Names.Count, needs, each);
        }
        else if (recipe is not null)
        {
            Follow(recipe, each * amounts.Colours, needs);
        }
        else if (parts.Count == 0)
        {
            Pigments(amounts.Colours, needs, each);
        }

        foreach (var need in needs.All)
        {
            Add(need);
        }

        _open.AddRange(needs.Unknown.Select(name => $"{name}: nothing of that name here"));
        if (_batch is not null && _ofBatch is null)
        {
            _open.Add($"batch {_batch.Number}: its parts left the shelf when it was mixed");
        }
        else if (_ofBatch is not null && _needs.All(need => need.Material.Id != _ofBatch.Id))
        {
            _open.Add($"batch {_batch!.Number}: how much went in was not said");
        }
    }

    // What carries powders is the batch where it is a medium.
    private void Add(Need need)
    {
        var isMedium = need.Material.Name == PourNeeds.Medium && _ofBatch is not null && !TakesActivator;
        var material = isMedium ? _ofBatch! : need.Material;
        var at = _needs.FindIndex(one => one.Material.Id == material.Id);
        if (at < 0)
        {
            _needs.Add(new Need(material, need.Units));
        }
        else
        {
            _needs[at] = new Need(material, _needs[at].Units + need.Units);
        }
    }

    // Colours that nobody named: a batch carries them, and what tints them is not known.
    private void Pigments(int count, PourNeeds needs, Volume each)
    {
        if (count < 1)
        {
            return;
        }

        if (_ofBatch is not null && !TakesActivator)
        {
            needs.Add(_ofBatch.Name, (each * count).Millilitres);
            _open.Add("the pigments: not named");
        }
        else
        {
            _open.Add(count == 1 ? "a colour: not named" : $"{count} colours: not named");
        }
    }

    // Powders hardly add to the volume, so a recipe's size is that of what is poured into it.
    private void Follow(Recipe recipe, Volume total, PourNeeds needs)
    {
        if (recipe.Makes is { } makes)
        {
            needs.Add(makes, total.Millilitres);
            return;
        }

        var poured = recipe.Parts.Select(part => part.Amount).OfType<Amount.ByVolume>()
            .Sum(amount => amount.Volume.Millilitres);
        if (poured <= 0)
        {
            _open.Add($"{recipe.Name}: it has no volume to go by");
            return;
        }

        foreach (var part in recipe.Parts)
        {
            needs.Add(part.Material, Need.UnitsOf(part.Amount) * total.Millilitres / poured);
        }
    }

    // A paint on a scale is turned by its density, a powder by the spoon that somebody weighed.
    private void Said(CupPart part, PourNeeds needs)
    {
        var material = _writing.Session.Materials.All().FirstOrDefault(one => one.Name == part.Name);
        var units = (material?.Form, part.Amount) switch
        {
            (MaterialForm.Powder, Amount.ByMass mass) => mass.Mass.Grams,
            (MaterialForm.Powder, Amount.ByVolume volume) when material!.GramsPerTeaspoon is { } spoon =>
                spoon.Grams * (volume.Volume / Volume.FromMillilitres(TeaspoonMillilitres)),
            (not (MaterialForm.Powder or MaterialForm.Counted or null), Amount.ByVolume volume) =>
                volume.Volume.Millilitres,
            (not (MaterialForm.Powder or MaterialForm.Counted or null), Amount.ByMass mass)
                when material!.Density is { } density => (mass.Mass / density).Millilitres,
            _ => (double?)null,
        };
        if (units is { } known)
        {
            needs.Add(part.Name, known);
        }
        else
        {
            _open.Add($"{part.Name}: {AmountWords.Say(part.Amount)} can't be turned into what it is measured in");
        }
    }

    // A US teaspoon: 768 to the gallon of 231 cubic inches.
    private const double TeaspoonMillilitres = 4.92892159375;

    private void Draw(Need need)
    {
        if (Need.UnitsOf(need.Amount) < Least)
        {
            return;
        }

        var stock = _writing.Session.Stock;
        var lot = need.Material.Id == _ofBatch?.Id && _batch?.LotId is { } id
            ? _writing.Session.Lots.Find(id)
            : null;
        var drawn = lot is null
            ? stock.Draw(need.Material, need.Amount, StockReason.Poured, _writing.Act)
            : stock.DrawFrom([lot], need.Material, need.Amount, StockReason.Poured, _writing.Act);
        switch (drawn)
        {
            case Drawn.Taken taken:
                _taken.Add((need, Level(need.Material)));
                _lots.AddRange(taken.FromLots.Select(share => share.Label).OfType<string>());
                break;
            case Drawn.Short missing:
                var here = need.Units - Need.UnitsOf(missing.Missing);
                _open.Add($"{need.Material.Name}: {Show.Amount((need with { Units = here }).Amount)} here, "
                    + $"{Show.Amount(need.Amount)} needed");
                break;
        }
    }

    // Less than a book can hold.
    private const double Least = 0.001;

    private Amount Level(Material material) =>
        _writing.Session.Materials.Levels().First(level => level.MaterialId == material.Id).Left;

    private Material? MadeBy(Batch batch) =>
        _writing.Session.Recipes.All().FirstOrDefault(recipe => recipe.Name == batch.Recipe)?.Makes is { } makes
            ? _writing.Session.Materials.All().FirstOrDefault(material => material.Name == makes)
            : null;
}
