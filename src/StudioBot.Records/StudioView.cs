using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;
using StudioBot.Records.House;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;
using StudioBot.Records.Reminders;
using StudioBot.Records.Rooms;
using StudioBot.Records.Stock;
using StudioBot.Records.Workshops;

namespace StudioBot.Records;

/// <summary>The studio at one moment, to look at: what tries to write here is refused by the file itself.</summary>
public class StudioView
{
    internal StudioView(SqliteConnection connection)
    {
        Acts = new ActRecords(connection);
        Reminders = new ReminderRecords(connection);
        Wishes = new WishRecords(connection);
        Stock = new StockRecords(connection);
        Counts = new CountRecords(connection);
        Trails = new TrailRecords(connection);
        Money = new MoneyRecords(connection);
        Accounts = new AccountRecords(connection);
        Payments = new PaymentRecords(connection);
        Studio = new StudioRecords(connection);
        Members = new MemberRecords(connection);
        Refusals = new RefusalRecords(connection);
        Rooms = new RoomRecords(connection);
        Materials = new MaterialRecords(connection);
        Lots = new LotRecords(connection);
        Recipes = new RecipeRecords(connection);
        Batches = new BatchRecords(connection);
        Pieces = new PieceRecords(connection);
        Workshops = new WorkshopRecords(connection);
    }

    /// <summary>Who wrote what when.</summary>
    public ActRecords Acts { get; }

    /// <summary>What the bot has to say by itself.</summary>
    public ReminderRecords Reminders { get; }

    /// <summary>Who wants to be told what.</summary>
    public WishRecords Wishes { get; }

    /// <summary>What came into the stock and what left it.</summary>
    public StockRecords Stock { get; }

    /// <summary>Who got or bore what by counts.</summary>
    public CountRecords Counts { get; }

    /// <summary>Where lots went.</summary>
    public TrailRecords Trails { get; }

    /// <summary>Who owes whom.</summary>
    public MoneyRecords Money { get; }

    /// <summary>One account, line by line.</summary>
    public AccountRecords Accounts { get; }

    /// <summary>What was paid to a member, and whether it came.</summary>
    public PaymentRecords Payments { get; }

    /// <summary>What the studio has set.</summary>
    public StudioRecords Studio { get; }

    /// <summary>Who belongs to it.</summary>
    public MemberRecords Members { get; }

    /// <summary>What was refused to whom.</summary>
    public RefusalRecords Refusals { get; }

    /// <summary>Its rooms, their air and their shelves.</summary>
    public RoomRecords Rooms { get; }

    /// <summary>What it works with, and how much is there.</summary>
    public MaterialRecords Materials { get; }

    /// <summary>What was bought when.</summary>
    public LotRecords Lots { get; }

    /// <summary>Its saved mixtures.</summary>
    public RecipeRecords Recipes { get; }

    /// <summary>What was mixed.</summary>
    public BatchRecords Batches { get; }

    /// <summary>What was poured.</summary>
    public PieceRecords Pieces { get; }

    /// <summary>What is set aside for workshops.</summary>
    public WorkshopRecords Workshops { get; }
}
