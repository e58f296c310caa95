namespace StudioBot.Chat.Reading.Values;

/// <summary>What every record takes: the day it happened, and whose it is.</summary>
internal static class RecordSlots
{
    /// <summary>Tuesday, yesterday, 28 Nov: the last one.</summary>
    public static readonly WhenSlot Day = new(isPast: true, "date");

    /// <summary>14:20, 14.20, yesterday 23:50: when something was seen of which minutes count.</summary>
    public static readonly WhenSlot Seen = new(isPast: true, "date", isMinute: true);

    /// <summary>For Pia.</summary>
    public static readonly PersonSlot For = new("member") { Leads = ["for", "by"], OpensLine = true };
}
