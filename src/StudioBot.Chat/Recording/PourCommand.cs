using System.Globalization;
using StudioBot.Chat.Asking;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;
using Measure = StudioBot.Chat.Reading.Measure;

namespace StudioBot.Chat.Recording;

/// <summary><c>pour 30cm panel bloom 6 colours batch 12</c>: a pour, and the piece that comes of it.</summary>
internal sealed class PourCommand : Act
{
    // More than this nobody pours at once.
    private const int MostPieces = 60;
    private const int MostRows = 4;
    private const int MostOpen = 2;
    private const int MostLots = 4;

    // Of a phone's twelve; its ready day follows.
    private const int OwnLines = 9;

    private static readonly SurfaceSlot Size = new();
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly BatchSlot Batch = new();
    private static readonly NameSlot Recipe = new(NameKind.Recipe, "recipe", "a recipe", "ocean") { IsStrict = false };
    private static readonly CupPartsSlot Parts = new() { Key = "parts", NeedsUnit = true };
    private static readonly ColoursSlot Colours = new();
    private static readonly ReservedSlot Number = new();
    private static readonly AirSlot Air = new();
    private static readonly AmountSlot Mixed = new("what was mixed", "318 ml") { Only = Measure.Volume };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "pour", Room.Recording, "A pour, and the piece that comes of it.",
        [
            Size, Way, Batch, Recipe, PourSlots.Left, PourSlots.Caught, Parts, Colours, Number, Mixed, Air,
            RecordSlots.Day, RecordSlots.For,
        ],
        [
            "pour 30cm panel bloom 6 colours batch 12",
            "pour 25cm tile swipe white, lamp black",
            "pour 30cm panel bloom white, lamp black, gold mica batch 12",
        ])
    {
        More = "What was named leaves the shelf, what could not be booked is said, and the gravest that is "
            + "known to go wrong with it. One that has its number: pour 22 bloom 6 colours.",
        Also = ["poured"],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said switch
    {
        _ when !said.Has(Size) && !said.Has(Number) => new Misread("", "a size is missing", Sheet.Examples[0]),
        _ when said.Has(Number) && said.Has(Size) && said.Of(Size).Count > 1 => new Misread(
            Figures.Of(said.Of(Number)), "is the number of one piece, and several are poured", Sheet.Examples[0]),
        _ when said.Has(Size) && said.Of(Size).Count > MostPieces => new Misread(
            Figures.Of(said.Of(Size).Count), "pieces are more than one pour", Sheet.Examples[0]),
        _ => null,
    };

    /// <inheritdoc/>
    internal override bool ShowsReadyDays => true;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var reserved = said.Has(Number) ? writing.Session.Pieces.FindReserved(said.Of(Number)) : null;
        var surfaces = said.Has(Size) ? said.Of(Size) : new SurfaceSet(reserved!.Surface, depth: reserved.Depth);
        var measured = Measured(said);
        if (measured.Wrong is { } wrong)
        {
            return TalkedOf.Trouble($"{wrong}. Nothing recorded.", Sheet.Examples[0]);
        }

        var parts = said.Or(Parts, []);
        var colours = Said(said, parts);
        var pours = writing.Practice.Pours;
        var recipe = said.Has(Recipe)
            ? writing.Session.Recipes.All().First(one => one.Name == said.Of(Recipe))
            : null;
        var batch = said.Has(Batch) ? writing.Session.Batches.Find(said.Of(Batch)) : null;
        var technique = writing.Studio.Technique(said.Has(Way) ? said.Of(Way) : null);
        var amounts = writing.Studio.Amounts(
            technique,
            surfaces,
            colours?.Count ?? pours.UsualColours.Value,
            StudioFilms.Of(technique, surfaces, writing.Whose.Name, writing.Studio));
        var stock = PourStock.Take(amounts, colours, parts, recipe, batch, writing);
        if (FirstCame.Against(stock.Taken.Select(one => one.Need), said, writing) is { } early)
        {
            return early;
        }

        var numbers = Poured(surfaces, stock, measured, writing, new NewPiece(
            surfaces.Groups[0].Surface, technique.Name, writing.Whose, writing.HappenedAt)
        {
            Number = reserved?.Number,
            Depth = surfaces.Depth,
            Colours = colours?.Count,
            Recipe = recipe,
            Batch = batch?.Number,
        });
        writing.Touch(numbers);
        var hazard = Hazard(stock, colours, recipe, batch, writing);
        return Answer(said, numbers, surfaces, amounts, stock, [.. Told(said, measured, writing), .. hazard], writing);
    }

    // A colour with an amount is a colour too; a bare count says only how many.
    private static Colours? Said(Phrase said, IReadOnlyList<CupPart> parts)
    {
        var names = said.Has(Colours) ? said.Of(Colours).Names : [];
        var all = names.Concat(parts.Select(part => part.Name).Where(name => name != PourNeeds.Medium))
            .Distinct().ToList();
        var count = Math.Max(said.Has(Colours) ? said.Of(Colours).Count : 0, all.Count);
        return count == 0 ? null : new Colours(count, all);
    }

    private static PourVolumes Measured(Phrase said) =>
        new(Volume(said, Mixed), Volume(said, PourSlots.Left), Volume(said, PourSlots.Caught));

    private static Volume? Volume(Phrase said, AmountSlot slot) =>
        said.Has(slot) && said.Of(slot) is Amount.ByVolume volume ? volume.Volume : null;

    // What was measured over several pieces is shared by the area of their faces, as what they took is.
    private static List<int> Poured(
        SurfaceSet surfaces, PourStock stock, PourVolumes measured, Writing writing, NewPiece likeThis)
    {
        var materials = writing.Session.Materials.All();
        List<int> numbers = [];
        foreach (var group in surfaces.Groups)
        {
            var share = group.Surface.Face / surfaces.Faces;
            var parts = stock.Needs.Where(need => need.Material.Form != MaterialForm.Counted)
                .Select(need => new Need(need.Material, need.Units * share))
                .Where(need => need.Units >= 0.001)
                .Select(need => Part.Of(materials.First(one => one.Id == need.Material.Id), need.Amount))
                .ToList();
            for (var i = 0; i < group.Count; i++)
            {
                var number = writing.Session.Pieces.Pour(
                    likeThis with { Surface = group.Surface, Parts = parts, Poured = measured.Mixed * share },
                    writing.Act);
                numbers.Add(number);
                Stayed(number, measured, share, writing);
            }
        }

        return numbers;
    }

    private static void Stayed(int number, PourVolumes measured, double share, Writing writing)
    {
        if (measured.Left is { } left)
        {
            writing.Session.Pieces.Book(
                number, new PieceEvent.Left(PourVolumes.Bookable(left * share)), writing.Act);
        }

        if (measured.Caught is { } caught)
        {
            writing.Session.Pieces.Book(
                number, new PieceEvent.Caught(PourVolumes.Bookable(caught * share)), writing.Act);
        }
    }

    private static Reply Answer(
        Phrase said,
        List<int> numbers,
        SurfaceSet surfaces,
        PourAmounts amounts,
        PourStock stock,
        IReadOnlyList<Block> told,
        Writing writing)
    {
        var buttons = Also(amounts, stock, writing);
        var reply = new Reply(Blocks(MostRows, withLots: true), buttons);
        for (var rows = MostRows - 1; rows >= 2 && LineBudget.Of(reply) > OwnLines; rows--)
        {
            reply = new Reply(Blocks(rows, withLots: rows > 2), buttons);
        }

        return reply;

        List<Block> Blocks(int rows, bool withLots)
        {
            List<Block> blocks =
            [
                new Block.Headline(numbers.Count == 1
                    ? $"Piece {numbers[0]}: write {numbers[0]} under it."
                    : $"Pieces {numbers[0]} to {numbers[^1]}: write them under."),
                new Block.Line(What(said, surfaces, amounts) + Place(numbers[0], writing)),
            ];
            if (stock.Taken.Count > 0)
            {
                blocks.Add(FitRows.Of(Rows(stock.Taken, rows)));
            }

            if (withLots && stock.Lots.Count > 0)
            {
                var lots = stock.Lots.Distinct().ToList();
                blocks.Add(new Block.Line($"From {string.Join(", ", lots.Take(MostLots))}"
                    + (lots.Count > MostLots ? $" and {lots.Count - MostLots} more." : ".")));
            }

            return [.. blocks, .. told, .. Minded(stock, writing)];
        }
    }

    private static List<Block> Told(Phrase said, PourVolumes measured, Writing writing)
    {
        List<Block> blocks = [];
        if (measured != PourVolumes.Unknown)
        {
            blocks.Add(new Block.Line(measured.Words + "."));
        }

        if (Noted(said, writing) is { } air)
        {
            blocks.Add(new Block.Line(air));
        }

        return blocks;
    }

    // Of what is poured, or of what went into the mixture it is poured from: the gravest alone.
    private static IEnumerable<Block> Hazard(
        PourStock stock, Colours? colours, Recipe? recipe, Batch? batch, Writing writing)
    {
        var poured = stock.Needs.Where(need => need.Material.Form != MaterialForm.Counted)
            .Select(need => Part.Of(need.Material, need.Amount));
        var mixed = recipe ?? writing.Session.Recipes.All().FirstOrDefault(one => one.Name == batch?.Recipe);
        return new[]
        {
            RecipeHazards.Gravest([.. poured], writing.Studio, colours is null || colours.Count == colours.Names.Count),
            mixed is null ? null : RecipeHazards.Gravest(mixed.Parts, writing.Studio),
        }.OfType<Block>().Take(1);
    }

    private static IEnumerable<Block> Minded(PourStock stock, Writing writing)
    {
        if (stock.Open.Count > 0)
        {
            var more = stock.Open.Count > MostOpen ? $"; and {stock.Open.Count - MostOpen} more" : "";
            yield return new Block.Line("Not booked: " + string.Join("; ", stock.Open.Take(MostOpen)) + more + ".");
        }

        if (stock.Needs.Any(need => need.Material.Form == MaterialForm.Powder))
        {
            yield return Cautions.InAWord(writing.Studio, SafetySubject.Powder);
        }
    }

    private static string What(Phrase said, SurfaceSet surfaces, PourAmounts amounts)
    {
        List<string> words = [Show.Surfaces(surfaces), amounts.Technique.Name + (said.Has(Way) ? "" : " (taken)")];
        if (said.Has(Recipe))
        {
            words.Add(said.Of(Recipe));
        }

        if (said.Has(Batch))
        {
            words.Add($"batch {said.Of(Batch)}");
        }

        return string.Join(", ", words);
    }

    private static string Place(int number, Writing writing) =>
        $"; drying, {PiecePlace.Words(writing.Session.Pieces.Find(number)!, writing.Session)}.";

    private static List<Figure> Rows(IReadOnlyList<(Need Need, Amount Left)> taken, int most)
    {
        var shown = taken.Count > most ? most - 1 : taken.Count;
        List<Figure> rows = [.. taken.Take(shown).Select(row => new Figure(
            row.Need.Material.Name, $"{Show.Amount(row.Need.Amount)}, {Show.Amount(row.Left)} left"))];
        if (taken.Count > shown)
        {
            rows.Add(new Figure($"and {taken.Count - shown} more", ""));
        }

        return rows;
    }

    // The air that was said is a reading of the room where new pieces lie.
    private static string? Noted(Phrase said, Writing writing)
    {
        if (!said.Has(Air)
            || said.Of(Air) is not { Air: { } temperature, Humidity: { } humidity }
            || writing.Session.Rooms.All() is not [var room, ..])
        {
            return null;
        }

        writing.Session.Rooms.Read(room, temperature, humidity, writing.HappenedAt, writing.Act);
        writing.Stir(PiecePlace.In(room.Name, writing.Session));
        return $"Air of {room.Name} noted: {Show.Degrees(temperature)}, {Show.Number(humidity.Percent, 0)} %.";
    }

    // What nobody named is offered with its usual amounts, and booked only when it is pressed.
    private static List<Button> Also(PourAmounts amounts, PourStock stock, Writing writing)
    {
        var needs = new PourNeeds(writing.Studio);
        needs.Pour(amounts, new Colours(amounts.Colours, []));
        var taken = stock.Needs.Select(need => need.Material.Id).ToHashSet();
        var parts = needs.All
            .Where(need => need.Material.Form != MaterialForm.Powder
                && need.Material.Name != PourNeeds.Medium
                && !taken.Contains(need.Material.Id))
            .Select(need => need.Material.Form == MaterialForm.Counted
                ? $"{Math.Ceiling(need.Units).ToString("0", CultureInfo.InvariantCulture)} {need.Material.Name}s"
                : $"{Show.ToMeasure(need.Amount is Amount.ByVolume volume ? volume.Volume : default)} "
                    + need.Material.Name)
            .ToList();
        return parts.Count == 0 ? [] : [new Button("Base, cups too", "used " + string.Join(", ", parts))];
    }
}
