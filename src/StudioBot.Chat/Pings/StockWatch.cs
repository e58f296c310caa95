using StudioBot.Records;

namespace StudioBot.Chat.Pings;

/// <summary>Looks over the whole shelf: as days go by the use of a material rises, and with it its mark.</summary>
public static class StockWatch
{
    /// <summary>Plans what is to be said of levels that are low now.</summary>
    /// <param name="session">Where the table of reminders is.</param>
    /// <param name="studio">The studio, over the same session.</param>
    /// <param name="now">The moment.</param>
    public static void Look(StudioSession session, Studio studio, DateTimeOffset now)
    {
        var turn = new PingTurn(studio, now);
        PingPlans.RenewShelf(session, turn, turn.Materials, act: null);
    }
}
