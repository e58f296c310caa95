using StudioBot.Chat.Exporting;
using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;
using Columns = StudioBot.Chat.Importing.StockSheet.Columns;

namespace StudioBot.Chat.Importing;

/// <summary>Takes a file of lots, as an export of the stock writes it, into a shelf: all of it or nothing.</summary>
/// <remarks>One act, which undo takes back; only a material it named stays named, as the book of its lots does. Nobody
/// is credited: who once paid for it, other books know.</remarks>
public static class StockImport
{
    /// <summary>The kind of the act.</summary>
    public const string Kind = "import";

    /// <summary>Takes it in, where nothing is wrong with any line of it.</summary>
    /// <param name="session">Where.</param>
    /// <param name="content">The file.</param>
    /// <param name="zone">The studio's clock.</param>
    /// <param name="by">Who does it, in which words and when; its kind is not read.</param>
    public static Imported Into(StudioSession session, byte[] content, StudioZone zone, NewAct by)
    {
        List<ImportTrouble> troubles = [];
        var currency = session.Studio.Settings()?.Currency ?? "";
        List<OpeningLot> lots = [];
        if (StockSheet.Read(content, troubles) is { } sheet)
        {
            lots.AddRange(sheet.Rows
                .Select(row => new OpeningCells(sheet, row, by.HappenedAt, zone, currency, troubles).Read())
                .OfType<OpeningLot>());
        }

        Check(lots, session, troubles);
        return troubles.Count > 0
            ? new Imported.Refused([.. troubles.OrderBy(trouble => trouble.Line)])
            : Book(lots, session, by);
    }

    // What the studio knows already, and what an earlier line said.
    private static void Check(List<OpeningLot> lots, StudioView view, List<ImportTrouble> troubles)
    {
        var materials = ByName(view);
        var here = view.Lots.All().Where(lot => lot.Label is not null)
            .Select(lot => (lot.MaterialId, Label: lot.Label!.ToUpperInvariant()))
            .ToHashSet();
        var named = Forming(lots);
        Dictionary<(string Material, string Label), int> labels = [];
        foreach (var lot in lots)
        {
            var material = materials.GetValueOrDefault(lot.Material);
            if (Against(lot, material, named.GetValueOrDefault(lot.Material)) is { } trouble)
            {
                troubles.Add(trouble);
            }

            if (lot.Label?.ToUpperInvariant() is not { } label)
            {
                continue;
            }

            var key = (lot.Material.ToUpperInvariant(), label);
            if (material is not null && here.Contains((material.Id, label)))
            {
                troubles.Add(new ImportTrouble(
                    lot.Line, Columns.Lot,
                    $"lot {ImportTrouble.Quoted(lot.Label)} of {ImportTrouble.Quoted(material.Name)} is here already",
                    "Leave the line out, or give it another label."));
            }
            else if (!labels.TryAdd(key, lot.Line))
            {
                troubles.Add(new ImportTrouble(
                    lot.Line, Columns.Lot,
                    $"lot {ImportTrouble.Quoted(lot.Label)} stands in line {labels[key]} already",
                    "Give it another label, or none."));
            }
        }
    }

    // The first line of each material that says its form.
    private static Dictionary<string, OpeningLot> Forming(List<OpeningLot> lots)
    {
        Dictionary<string, OpeningLot> named = new(StringComparer.OrdinalIgnoreCase);
        foreach (var lot in lots.Where(lot => lot.Form is not null))
        {
            named.TryAdd(lot.Material, lot);
        }

        return named;
    }

    private static ImportTrouble? Against(OpeningLot lot, Material? material, OpeningLot? first)
    {
        var form = material?.Form ?? first?.Form;
        var name = ImportTrouble.Quoted(material?.Name ?? lot.Material);
        return form switch
        {
            null => new ImportTrouble(
                lot.Line, Columns.Form, $"{name} is no material here, and its form is missing",
                $"Name one that is here, or write {string.Join(", ", StockTable.Forms.Values)}."),
            { } known when lot.Form is { } said && said != known => new ImportTrouble(
                lot.Line, Columns.Form,
                material is null ? $"{name} is {StockTable.Forms[known]} in line {first!.Line}"
                    : $"{name} is {StockTable.Forms[known]} here",
                $"Write {StockTable.Forms[known]}, or give it another name."),
            { } known when !Fits(known, lot.Left) => new ImportTrouble(
                lot.Line, Columns.Unit, $"{name} is kept in {OpeningCells.UnitOf(known)}",
                $"Write it in {OpeningCells.UnitOf(known)}."),
            _ => null,
        };
    }

    private static bool Fits(MaterialForm form, Amount amount) => Cell.UnitOf(amount).Text == OpeningCells.UnitOf(form);

    private static Dictionary<string, Material> ByName(StudioView view)
    {
        Dictionary<string, Material> materials = new(StringComparer.OrdinalIgnoreCase);
        foreach (var material in view.Materials.All())
        {
            materials.TryAdd(material.Name, material);
        }

        return materials;
    }

    // A new material is not kept in the act: the lots that came, which no undo erases, are of it for good.
    private static Imported.Done Book(List<OpeningLot> lots, StudioSession session, NewAct by)
    {
        var act = session.Acts.Begin(by with { Kind = Kind });
        var materials = ByName(session);
        var forming = Forming(lots);
        var before = session.Lots.Worth();
        List<string> named = [];
        foreach (var lot in lots)
        {
            if (!materials.TryGetValue(lot.Material, out var material))
            {
                material = session.Materials.Add(
                    new NewMaterial(lot.Material, forming[lot.Material].Form!.Value));
                materials.Add(material.Name, material);
                named.Add(material.Name);
            }

            session.Stock.Enter(
                new NewLot(material, lot.Bought, lot.BoughtAt)
                {
                    Label = lot.Label,
                    Left = lot.Left,
                    Price = lot.Price,
                    Worth = lot.Worth,
                    OpenedAt = lot.OpenedAt,
                    Stopped = lot.Stopped,
                },
                StockReason.Opening,
                act);
        }

        return new Imported.Done(act, lots.Count, named, session.Lots.Worth() - before);
    }
}
