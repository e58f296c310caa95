namespace StudioBot.Records.Acts;

/// <summary>A table that is no book and whose rows undo puts back.</summary>
/// <param name="Name">Its name in the file.</param>
/// <param name="Key">The column that says which row, or which set of rows, is meant.</param>
/// <param name="IsSet">Several rows share a key and go back together.</param>
internal sealed record KeptTable(string Name, string Key, bool IsSet = false)
{
    public static readonly KeptTable Studio = new("studio", "id");
    public static readonly KeptTable Setting = new("studio_setting", "name");
    public static readonly KeptTable Technique = new("technique_override", "name");
    public static readonly KeptTable Member = new("member", "id");
    public static readonly KeptTable Accounts = new("account", "member_id", IsSet: true);
    public static readonly KeptTable Room = new("room", "id");
    public static readonly KeptTable Shelf = new("shelf", "id");
    public static readonly KeptTable Material = new("material", "id");
    public static readonly KeptTable Packs = new("pack", "material_id", IsSet: true);
    public static readonly KeptTable Lot = new("lot", "id");
    public static readonly KeptTable LotStop = new("lot_stop", "lot_id");
    public static readonly KeptTable Recipe = new("recipe", "id");
    public static readonly KeptTable RecipeParts = new("recipe_part", "recipe_id", IsSet: true);
    public static readonly KeptTable PieceNumber = new("piece_number", "number");
    public static readonly KeptTable Reminder = new("reminder", "id");
    public static readonly KeptTable Wish = new("wish", "member_id");
    public static readonly KeptTable Receipt = new("payment_receipt", "act_id");
    public static readonly KeptTable UnwantedPings = new("unwanted_ping", "member_id", IsSet: true);

    // Whom undo may write to: a name in the file is looked up here and never pasted into a statement.
    private static readonly Dictionary<string, KeptTable> All = new KeptTable[]
    {
        Studio, Setting, Technique, Member, Accounts, Room, Shelf, Material, Packs, Lot, LotStop, Recipe, RecipeParts,
        PieceNumber, Reminder, Wish, UnwantedPings, Receipt,
    }.ToDictionary(table => table.Name);

    public static KeptTable Named(string name) => All[name];
}
