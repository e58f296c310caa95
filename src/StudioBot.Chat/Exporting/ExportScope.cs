using System.Globalization;
using StudioBot.Craft.Reminders;
using StudioBot.Records;

namespace StudioBot.Chat.Exporting;

/// <summary>What of the books is exported, and who may see which sums.</summary>
/// <param name="View">The records.</param>
/// <param name="Zone">The studio's clock.</param>
internal sealed record ExportScope(StudioView View, StudioZone Zone)
{
    /// <summary>Only what is about this month, 2026-11; none: from the beginning.</summary>
    public string? Month { get; init; }

    /// <summary>Whose sums are told; none: nobody's.</summary>
    public long? SumsOf { get; init; }

    /// <summary>Everybody's sums are told.</summary>
    public bool SumsOfAll { get; init; }

    /// <summary>The studio's currency.</summary>
    public string Currency { get; init; } = "";

    /// <summary>Whether this moment is in the month.</summary>
    public bool Holds(DateTimeOffset moment) => Month is null
        || Zone.LocalOf(moment).ToString("yyyy-MM", CultureInfo.InvariantCulture) == Month;

    /// <summary>Whether the sums of this member are told; none: of nobody in particular.</summary>
    public bool Tells(long? member) => SumsOfAll || (member is not null && member == SumsOf);
}
