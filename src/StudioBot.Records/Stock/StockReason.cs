namespace StudioBot.Records.Stock;

/// <summary>Why a line stands in the stock's book.</summary>
public enum StockReason
{
    /// <summary>It was there when the books were opened.</summary>
    Opening,

    /// <summary>A delivery came.</summary>
    Bought,

    /// <summary>A mixture was made here.</summary>
    Made,

    /// <summary>Somebody used it.</summary>
    Used,

    /// <summary>It went into a mixture.</summary>
    Mixed,

    /// <summary>It was poured.</summary>
    Poured,

    /// <summary>It went into a coat.</summary>
    Coated,

    /// <summary>A count found another level.</summary>
    Counted,

    /// <summary>It was thrown away.</summary>
    Binned,

    /// <summary>It came back: left in the cup, caught in the tray.</summary>
    Returned,
}
