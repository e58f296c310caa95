namespace StudioBot.Craft.Reminders;

/// <summary>What the bot says by itself, the most pressing first. Kept by name: a name never changes.</summary>
public enum PingKind
{
    /// <summary>A recoat window is about to close.</summary>
    WindowCloses,

    /// <summary>Said before bedtime: a recoat window will close in quiet hours.</summary>
    WindowTonight,

    /// <summary>A recoat window has surely opened.</summary>
    WindowOpens,

    /// <summary>Minutes after a coat: pass over the bubbles.</summary>
    Torch,

    /// <summary>Minutes after a coat: wipe the drips from below.</summary>
    Drips,

    /// <summary>The estimate slides past a promised day.</summary>
    DueDanger,

    /// <summary>Somebody asked to be reminded.</summary>
    AskedFor,

    /// <summary>Likely ready to coat.</summary>
    Ready,

    /// <summary>Time to weigh, or to check by hand.</summary>
    Weigh,

    /// <summary>A coated piece may be moved.</summary>
    Handling,

    /// <summary>A coated piece is done.</summary>
    Cured,

    /// <summary>A level fell under its reorder point.</summary>
    StockLow,

    /// <summary>A lot or a batch has gone old.</summary>
    Old,

    /// <summary>The studio's week.</summary>
    Week,
}
